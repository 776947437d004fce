import { rodClearanceAngle } from "../../clearances/rodClearance.ts";
import { squirter } from "../../clearances/rodObstacles.ts";

export const rodToSquirterAngle = rodClearanceAngle({
  id: "rodToSquirterAngle",
  name: "Crank angle of the rod nearest to the squirter",
  symbol: "theta_rq",
  obstacle: squirter,
  expect: "30.3 deg",
});
