import { ringSide } from "../../ringSide.ts";

export const secondRingSideClearance = ringSide({
  id: "secondRingSideClearance",
  which: "Second",
  symbol: "c_g2",
  groove: "g_2",
  ring: "h_r2",
});
