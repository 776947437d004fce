import { rodClearanceAngle } from "../../clearances/rodClearance.ts";
import { oppositeCylinder } from "../../clearances/rodObstacles.ts";

export const rodToOppositeCylinderAngle = rodClearanceAngle({
  id: "rodToOppositeCylinderAngle",
  name: "Crank angle of the rod nearest to the other bank’s cylinder",
  symbol: "theta_ro",
  obstacle: oppositeCylinder,
  expect: "252.0 deg",
});
