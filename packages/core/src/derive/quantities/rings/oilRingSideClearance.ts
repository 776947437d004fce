import { ringSide } from "../../ringSide.ts";

export const oilRingSideClearance = ringSide({
  id: "oilRingSideClearance",
  which: "Oil",
  symbol: "c_g3",
  groove: "g_3",
  ring: "h_r3",
});
