import { ringPressure } from "../../ringPressure.ts";

export const topRingPressure = ringPressure({
  id: "topRingPressure",
  which: "top",
  symbol: "p_01",
  force: "F_t1",
  height: "h_r1",
  valid: "even contact round the bore",
});
