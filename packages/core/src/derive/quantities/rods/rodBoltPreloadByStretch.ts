import { preloadFromStretch } from "@trialfit/mechanics";
import { stretchedSegments } from "../../joints/stretchedSegments.ts";
import { quantity } from "../../Quantity.ts";

export const rodBoltPreloadByStretch = quantity({
  id: "rodBoltPreloadByStretch",
  name: "Preload of a rod bolt by stretch",
  symbol: "F_sb",
  unit: "kN",
  decimals: 1,
  system: "rods",
  meaning:
    "Preload that the measured stretch of a rod bolt stands for. Friction has no part in it, so it is the surest of all; far from the preload entered, one of the two was misread.",
  inputs: {
    f_b: "rodBolt.stretch",
    l_sh: "rodBolt.shankLength",
    A_sh: "rodBolt.shankArea",
    l_th: "rodBolt.threadLength",
    d: "rodBolt.threadDiameter",
    A_s: "rodBoltStressArea",
    E_s: "rodBolt.modulus",
  },
  formula: "f_b / (l_sh / (E_s * A_sh) + (l_th + d / 2) / (E_s * A_s))",
  compute: ({ f_b, l_sh, A_sh, l_th, d, A_s, E_s }) =>
    preloadFromStretch({ stretch: f_b, segments: stretchedSegments({ l_sh, A_sh, l_th, d, A_s, E_s }) }),
  shape: "monotone",
  valid: "below yield; free length taken on the same bolt",
  sources: [{ id: "vdi-2230" }],
  examples: [
    {
      given: {
        f_b: "0.1713 mm",
        l_sh: "30 mm",
        A_sh: "50.3 mm2",
        l_th: "5 mm",
        d: "9.525 mm",
        A_s: "57.178 mm2",
        E_s: "206 GPa",
      },
      expect: "46.0 kN",
    },
  ],
  display: true,
});
