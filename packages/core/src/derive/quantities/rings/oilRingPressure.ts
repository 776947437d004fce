import { ringPressure } from "../../ringPressure.ts";

export const oilRingPressure = ringPressure({
  id: "oilRingPressure",
  which: "oil",
  symbol: "p_03",
  force: "F_t3",
  height: "h_r3",
  valid: "over the whole height of the ring; its two edges press several times harder",
});
