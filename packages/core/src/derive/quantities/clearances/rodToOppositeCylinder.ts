import { rodClearance } from "../../clearances/rodClearance.ts";
import { oppositeCylinder } from "../../clearances/rodObstacles.ts";

export const rodToOppositeCylinder = rodClearance({
  id: "rodToOppositeCylinder",
  name: "Rod to cylinder of the other bank",
  symbol: "c_ro",
  obstacle: oppositeCylinder,
  meaning:
    "Least distance between a connecting rod and the lower edge of the cylinder that shares its crankpin in the other bank; negative when they strike. That cylinder is passed off its middle, where its round wall stands nearer.",
  expect: "2.53 mm",
});
