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
  method:
    "The height at which the standard atmosphere (15 °C, 1013.25 hPa, 1.225 kg/m³ at the sea, 6.5 K colder for each kilometre) has the density of the ambient air.",
  compute: ({ rho_a }) => altitudeOf(rho_a),
  shape: "monotone",
  valid: "below 11 000 m",
  sources: [{ id: "standard-atmosphere" }],
  examples: [{ given: { rho_a: "1.137 kg/m3" }, expect: "770 m" }],
  display: true,
});
