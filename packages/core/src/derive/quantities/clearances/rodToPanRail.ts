import { rodClearance } from "../../clearances/rodClearance.ts";
import { panRail } from "../../clearances/rodObstacles.ts";

export const rodToPanRail = rodClearance({
  id: "rodToPanRail",
  name: "Rod to oil pan rail",
  symbol: "c_rr",
  obstacle: panRail,
  meaning:
    "Least distance between the big end of the connecting rod, cap and bolts included, and the oil pan rails over a whole turn; negative when they strike. A longer stroke brings the rod nearer.",
  expect: "6.69 mm",
});
