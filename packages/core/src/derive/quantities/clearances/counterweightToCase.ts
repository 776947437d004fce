import { counterweightToCase as clearanceOf } from "@trialfit/mechanics";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const counterweightToCase = quantity({
  id: "counterweightToCase",
  name: "Counterweight to crankcase",
  symbol: "c_cc",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Distance between the rim of the counterweights and the crankcase, with the crankshaft lying on that side of its bearings; negative when they strike.",
  inputs: {
    R_cc: "block.crankcaseRadius",
    R_cw: "crankshaft.counterweightRadius",
    C_m: "mainBearingClearance",
  },
  formula: "R_cc - R_cw - C_m / 2",
  compute: ({ R_cc, R_cw, C_m }) =>
    clearanceOf({ caseRadius: R_cc, counterweightRadius: R_cw, mainBearingClearance: C_m }),
  shape: "monotone",
  hot: ABOUT_THE_CRANKSHAFT,
  valid: "stiff crankshaft; bending at speed takes more",
  sources: [{ id: "definition" }],
  examples: [{ given: { R_cc: "80 mm", R_cw: "74 mm", C_m: "0.06 mm" }, expect: "5.97 mm" }],
});
