import { yieldUse } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainFastenerUse = quantity({
  id: "mainFastenerUse",
  name: "Use of the main fastener’s yield strength",
  symbol: "nu_m",
  unit: "1",
  decimals: 3,
  system: "fasteners",
  meaning: "Preload of a main fastener over the load at which its weakest section, thread or shank, yields.",
  inputs: {
    F_vm: "mainPreload",
    A_m: "mainFastenerStressArea",
    A_sh: "mainFastener.shankArea",
    R_p: "mainFastener.yieldStrength",
  },
  formula: "F_vm / (min(A_m, A_sh) * R_p)",
  compute: ({ F_vm, A_m, A_sh, R_p }) =>
    yieldUse({ preload: F_vm, area: Math.min(A_m, A_sh), yieldStrength: R_p }),
  shape: "monotone",
  valid: "tension alone; the twist while tightening adds to it",
  sources: [{ id: "definition" }],
  examples: [
    { given: { F_vm: "67.7078 kN", A_m: "75.8498 mm2", A_sh: "78.5 mm2", R_p: "1200 MPa" }, expect: "0.744" },
  ],
});
