import { boltStretch } from "@trialfit/mechanics";
import { stretchedSegments } from "../../joints/stretchedSegments.ts";
import { quantity } from "../../Quantity.ts";

export const rodBoltStretchExpected = quantity({
  id: "rodBoltStretchExpected",
  name: "Rod bolt stretch to expect",
  symbol: "f_be",
  unit: "mm",
  decimals: 3,
  system: "rods",
  meaning:
    "Stretch of a bolt at the preload entered: of its shank, its free thread, and half a diameter of engaged thread. A stretch gauge that shows much less or more says that preload and stretch do not belong together.",
  inputs: {
    F_v: "rodBolt.preload",
    l_sh: "rodBolt.shankLength",
    A_sh: "rodBolt.shankArea",
    l_th: "rodBolt.threadLength",
    d: "rodBolt.threadDiameter",
    A_s: "rodBoltStressArea",
    E_s: "rodBolt.modulus",
  },
  formula: "F_v * (l_sh / (E_s * A_sh) + (l_th + d / 2) / (E_s * A_s))",
  compute: ({ F_v, l_sh, A_sh, l_th, d, A_s, E_s }) =>
    boltStretch({
      preload: F_v,
      segments: stretchedSegments({ l_sh, A_sh, l_th, d, A_s, E_s }),
    }),
  shape: "monotone",
  valid: "below yield",
  sources: [{ id: "vdi-2230" }],
  examples: [
    {
      given: {
        F_v: "46 kN",
        l_sh: "30 mm",
        A_sh: "50.3 mm2",
        l_th: "5 mm",
        d: "9.525 mm",
        A_s: "57.178 mm2",
        E_s: "206 GPa",
      },
      expect: "0.171 mm",
    },
  ],
  display: true,
});
