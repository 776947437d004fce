import { crownVolumeForRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownVolumeNeeded = quantity({
  id: "crownVolumeNeeded",
  name: "Crown volume needed",
  symbol: "V_pn",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "Net volume of the crown, valve pockets included, that gives the target compression ratio: positive for a dish, negative for a dome.",
  inputs: {
    V_d: "sweptVolume",
    epsilon_t: "targets.compressionRatio",
    V_ch: "cylinderHead.chamberVolume",
    V_g: "gasketVolume",
    V_k: "deckVolume",
    V_tl: "topLandVolume",
  },
  formula: "V_d / (epsilon_t - 1) - (V_ch + V_g + V_k + V_tl)",
  compute: ({ V_d, epsilon_t, V_ch, V_g, V_k, V_tl }) =>
    crownVolumeForRatio({
      sweptVolume: V_d,
      compressionRatio: epsilon_t,
      chamber: V_ch,
      gasket: V_g,
      deck: V_k,
      topLand: V_tl,
      other: 0,
    }),
  shape: "guarded",
  valid: "target ratio above 1",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: {
        V_d: "552.399 cm3",
        epsilon_t: "9.4",
        V_ch: "45 cm3",
        V_g: "6.0132 cm3",
        V_k: "0.59149 cm3",
        V_tl: "0.6159 cm3",
      },
      expect: "13.54 cm3",
    },
  ],
});
