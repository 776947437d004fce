import { boltStretch } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Modulus of elasticity of steel [Pa]. Source: from memory. */
const STEEL_MODULUS = 206e9;

export const rodBoltStretchExpected = quantity({
  id: "rodBoltStretchExpected",
  name: "Rod bolt stretch to expect",
  symbol: "f_be",
  unit: "mm",
  decimals: 3,
  system: "rods",
  meaning:
    "Stretch of a steel bolt at the preload entered: of its shank, its free thread, and half a diameter of engaged thread. A stretch gauge that shows much less or more says that preload and stretch do not belong together.",
  inputs: {
    F_v: "rodBolt.preload",
    l_sh: "rodBolt.shankLength",
    A_sh: "rodBolt.shankArea",
    l_th: "rodBolt.threadLength",
    d: "rodBolt.threadDiameter",
    A_s: "rodBoltStressArea",
  },
  formula: "F_v * (l_sh / (206e9 * A_sh) + (l_th + d / 2) / (206e9 * A_s))",
  compute: ({ F_v, l_sh, A_sh, l_th, d, A_s }) =>
    boltStretch({
      preload: F_v,
      segments: [
        { length: l_sh, area: A_sh, elasticModulus: STEEL_MODULUS },
        { length: l_th + d / 2, area: A_s, elasticModulus: STEEL_MODULUS },
      ],
    }),
  shape: "monotone",
  valid: "steel bolts (206 GPa) below yield",
  sources: [{ id: "vdi-2230" }, { id: "from-memory", where: "modulus of steel" }],
  examples: [
    {
      given: {
        F_v: "46 kN",
        l_sh: "30 mm",
        A_sh: "50.3 mm2",
        l_th: "5 mm",
        d: "9.525 mm",
        A_s: "57.178 mm2",
      },
      expect: "0.171 mm",
    },
  ],
  display: true,
});
