import { airDensity } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const chargeDensity = quantity({
  id: "chargeDensity",
  name: "Charge density",
  symbol: "rho_ch",
  unit: "kg/m3",
  decimals: 3,
  system: "charge",
  meaning:
    "Density of the air in the inlet manifold. Power follows it more closely than it follows boost, for hot boost is thin.",
  inputs: { p_m: "induction.manifoldPressure", T_m: "induction.chargeTemperature" },
  formula: "p_m / (287.05 * T_m)",
  compute: ({ p_m, T_m }) => airDensity({ pressure: p_m, temperature: T_m }),
  shape: "monotone",
  valid: "dry air",
  sources: [{ id: "heywood" }],
  examples: [{ given: { p_m: "2.9 bar", T_m: "318 K" }, expect: "3.177 kg/m3" }],
  display: true,
});
