import { rodClearance } from "../../clearances/rodClearance.ts";
import { squirter } from "../../clearances/rodObstacles.ts";

export const rodToSquirter = rodClearance({
  id: "rodToSquirter",
  name: "Rod to oil squirter",
  symbol: "c_rq",
  obstacle: squirter,
  meaning:
    "Least distance between the connecting rod and the oil squirter under the piston over a whole turn; negative when they strike. A bent squirter no longer cools its piston, a broken one lies in the sump.",
  expect: "0.91 mm",
});
