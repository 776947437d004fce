import { yieldUse } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const headFastenerUse = quantity({
  id: "headFastenerUse",
  name: "Use of the head fastener’s yield strength",
  symbol: "nu_h",
  unit: "1",
  decimals: 3,
  system: "fasteners",
  meaning: "Preload of a head fastener over the load at which its weakest section, thread or shank, yields.",
  inputs: {
    F_vh: "headPreload",
    A_h: "headFastenerStressArea",
    A_sh: "headFastener.shankArea",
    R_p: "headFastener.yieldStrength",
  },
  formula: "F_vh / (min(A_h, A_sh) * R_p)",
  compute: ({ F_vh, A_h, A_sh, R_p }) =>
    yieldUse({ preload: F_vh, area: Math.min(A_h, A_sh), yieldStrength: R_p }),
  shape: "monotone",
  valid: "tension alone; the twist while tightening adds to it",
  sources: [{ id: "definition" }],
  examples: [
    { given: { F_vh: "67.7078 kN", A_h: "75.8498 mm2", A_sh: "78.5 mm2", R_p: "1250 MPa" }, expect: "0.714" },
  ],
});
