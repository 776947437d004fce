import { rodClearanceAngle } from "../../clearances/rodClearance.ts";
import { panRail } from "../../clearances/rodObstacles.ts";

export const rodToPanRailAngle = rodClearanceAngle({
  id: "rodToPanRailAngle",
  name: "Crank angle of the rod nearest to the pan rail",
  symbol: "theta_rr",
  obstacle: panRail,
  expect: "90.0 deg",
});
