import { quantity } from "../../Quantity.ts";

export const mainBearingTightestClearance = quantity({
  id: "mainBearingTightestClearance",
  name: "Main bearing clearance at its tightest place",
  symbol: "C_mt",
  unit: "mm",
  decimals: 3,
  system: "bearings",
  meaning:
    "Oil clearance where the narrowest diameter of the housing meets the thickest of the journal, cold: the clearance less what out-of-round and taper of both take on that side.",
  inputs: {
    C_m: "mainBearingClearance",
    o_Hm: "block.mainHousingOutOfRound",
    k_Hm: "block.mainHousingTaper",
    o_m: "crankshaft.mainJournalOutOfRound",
    k_m: "crankshaft.mainJournalTaper",
  },
  formula: "C_m - (o_Hm + k_Hm + o_m + k_m) / 2",
  compute: ({ C_m, o_Hm, k_Hm, o_m, k_m }) => C_m - (o_Hm + k_Hm + o_m + k_m) / 2,
  shape: "monotone",
  hot: {
    coldOnly:
      "it differs from the main bearing clearance by shape alone, which heat leaves as it is; that clearance has a hot value",
  },
  valid:
    "sizes in the middle between the largest and the smallest diameter; all four at their worst in one place, on the safe side",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { C_m: "0.062 mm", o_Hm: "0.007 mm", k_Hm: "0.004 mm", o_m: "0.003 mm", k_m: "0.002 mm" },
      expect: "0.054 mm",
    },
  ],
  display: true,
});
