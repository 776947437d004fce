import { moistAirDensity } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const ambientAirDensity = quantity({
  id: "ambientAirDensity",
  name: "Density of the ambient air",
  symbol: "rho_a",
  unit: "kg/m3",
  decimals: 3,
  system: "charge",
  meaning:
    "Density of the air where the engine is used, its moisture counted. A naturally aspirated engine’s power follows it.",
  inputs: {
    p_a: "conditions.ambientPressure",
    T_a: "conditions.ambientTemperature",
    phi_a: "conditions.relativeHumidity",
  },
  formula:
    "(p_a / 287.05 - phi_a * 610.94 * exp(17.625 * (T_a - 273.15) / (T_a - 273.15 + 243.04)) * (1 / 287.05 - 1 / 461.5)) / T_a",
  compute: ({ p_a, T_a, phi_a }) => moistAirDensity({ pressure: p_a, temperature: T_a, humidity: phi_a }),
  shape: "monotone",
  valid: "air and vapour as ideal gases, vapour pressure by the Magnus form; −40 to 60 °C",
  sources: [{ id: "definition" }, { id: "from-memory", where: "vapour pressure" }],
  examples: [{ given: { p_a: "1 bar", T_a: "303.15 K", phi_a: "60 %" }, expect: "1.138 kg/m3" }],
  display: true,
});
