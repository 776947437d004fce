import { quantity } from "../../Quantity.ts";

export const chargeDensityRatio = quantity({
  id: "chargeDensityRatio",
  name: "Charge density over ambient",
  symbol: "k_rho",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "How many times denser the charge is than the air outside: what charging and cooling really bring, heat taken into account.",
  inputs: { rho_ch: "chargeDensity", rho_a: "ambientAirDensity" },
  formula: "rho_ch / rho_a",
  compute: ({ rho_ch, rho_a }) => rho_ch / rho_a,
  shape: "monotone",
  valid: "any engine; just below 1 without a compressor",
  sources: [{ id: "definition" }],
  examples: [{ given: { rho_ch: "3.177 kg/m3", rho_a: "1.137 kg/m3" }, expect: "2.79" }],
  display: true,
});
