import { yieldUse } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBoltUse = quantity({
  id: "rodBoltUse",
  name: "Use of the rod bolt’s yield strength",
  symbol: "nu_b",
  unit: "1",
  decimals: 3,
  system: "rods",
  meaning:
    "Preload of a rod bolt over the load at which its weakest section, thread or shank, yields. Too little leaves the joint loose; too much leaves nothing for the load on top.",
  inputs: {
    F_v: "rodBolt.preload",
    A_s: "rodBoltStressArea",
    A_sh: "rodBolt.shankArea",
    R_p: "rodBolt.yieldStrength",
  },
  formula: "F_v / (min(A_s, A_sh) * R_p)",
  compute: ({ F_v, A_s, A_sh, R_p }) =>
    yieldUse({ preload: F_v, area: Math.min(A_s, A_sh), yieldStrength: R_p }),
  shape: "monotone",
  valid: "tension alone; the twist while tightening adds to it",
  sources: [{ id: "definition" }],
  examples: [
    { given: { F_v: "46 kN", A_s: "57.178 mm2", A_sh: "50.3 mm2", R_p: "1450 MPa" }, expect: "0.631" },
  ],
});
