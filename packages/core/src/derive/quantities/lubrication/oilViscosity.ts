import { vogelViscosity } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

const [WARM, HOT] = [373.15, 423.15];

export const oilViscosity = quantity({
  id: "oilViscosity",
  name: "Viscosity in the bearings",
  symbol: "mu_o",
  unit: "mPa s",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Dynamic viscosity of the oil at the temperature of the film, from its viscosity at 100 °C and its high-shear viscosity at 150 °C: a lower bound, since the second is measured under shear.",
  inputs: { mu_100: "oil.viscosity100", mu_hs: "oil.highShearViscosity", T_f: "oil.filmTemperature" },
  formula:
    "mu_100 * (mu_hs / mu_100)^((1 / (T_f - 178.15) - 1 / (373.15 - 178.15)) / (1 / (423.15 - 178.15) - 1 / (373.15 - 178.15)))",
  compute: ({ mu_100, mu_hs, T_f }) =>
    vogelViscosity({
      temperature: T_f,
      first: { temperature: WARM, viscosity: mu_100 },
      second: { temperature: HOT, viscosity: mu_hs },
    }),
  shape: "guarded",
  valid: "Vogel’s equation with 95 °C; engine oils; fuel in the oil thins it further",
  sources: [
    { id: "common-practice", where: "Vogel’s equation with 95 °C" },
    { id: "sae-j300", where: "viscosities assumed by grade" },
  ],
  examples: [{ given: { mu_100: "19 mPa s", mu_hs: "5.3 mPa s", T_f: "130 degC" }, expect: "8.25 mPa s" }],
  display: true,
});
