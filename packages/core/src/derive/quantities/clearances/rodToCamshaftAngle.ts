import { rodClearanceAngle } from "../../clearances/rodClearance.ts";
import { camshaftEnvelope } from "../../clearances/rodObstacles.ts";

export const rodToCamshaftAngle = rodClearanceAngle({
  id: "rodToCamshaftAngle",
  name: "Crank angle of the rod nearest to the camshaft",
  symbol: "theta_rc",
  obstacle: camshaftEnvelope,
  expect: "43.6 deg",
});
