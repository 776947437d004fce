import { densityAltitude as altitudeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const densityAltitude = quantity({
  id: "densityAltitude",
  name: "Density altitude",
  symbol: "h_rho",
  unit: "m",
  decimals: 0,
  system: "charge",
  meaning:
    "Height at which the standard atmosphere is as thin as this air: puts pressure, heat and moisture of a day into one number. Negative on a cold day of high pressure.",
  inputs: { rho_a: "ambientAirDensity" },
  formula: "288.15 / 0.0065 * (1 - (rho_a / 1.225)^(1 / 4.2559))",
  compute: ({ rho_a }) => altitudeOf(rho_a),
  shape: "monotone",
  valid:
    "below 11 000 m; the standard atmosphere of 15 °C and 1.225 kg/m³ at the sea, 6.5 K colder for each kilometre",
  sources: [{ id: "standard-atmosphere" }],
  examples: [{ given: { rho_a: "1.137 kg/m3" }, expect: "770 m" }],
  display: true,
});
