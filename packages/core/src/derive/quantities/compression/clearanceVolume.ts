import { clearanceVolume as volumeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const clearanceVolume = quantity({
  id: "clearanceVolume",
  name: "Clearance volume",
  symbol: "V_c",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "All the volume above the top ring that is left with the piston at top dead centre: chamber, crown, valve pockets given apart, gasket, deck and top land.",
  inputs: {
    V_ch: "cylinderHead.chamberVolume",
    V_p: "piston.crownVolume",
    V_vp: "piston.valvePocketVolume",
    V_g: "gasketVolume",
    V_k: "deckVolume",
    V_tl: "topLandVolume",
  },
  formula: "V_ch + V_p + V_vp + V_g + V_k + V_tl",
  compute: ({ V_ch, V_p, V_vp, V_g, V_k, V_tl }) =>
    volumeOf({ chamber: V_ch, crown: V_p + V_vp, gasket: V_g, deck: V_k, topLand: V_tl, other: 0 }),
  shape: "guarded",
  valid: "a plug or gauge passage that is not in the chamber volume is left out",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: {
        V_ch: "45 cm3",
        V_p: "13.8 cm3",
        V_vp: "0 cm3",
        V_g: "6.0132 cm3",
        V_k: "0.59149 cm3",
        V_tl: "0.6159 cm3",
      },
      expect: "66.02 cm3",
    },
  ],
});
