import { dryAirPressure as pressureOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const dryAirPressure = quantity({
  id: "dryAirPressure",
  name: "Pressure of the dry air",
  symbol: "p_d",
  unit: "bar",
  decimals: 4,
  system: "charge",
  meaning:
    "Ambient pressure less that of the water vapour in it: the part of the air that burns fuel. Power corrections are made with it.",
  inputs: {
    p_a: "conditions.ambientPressure",
    T_a: "conditions.ambientTemperature",
    phi_a: "conditions.relativeHumidity",
  },
  formula: "p_a - phi_a * 610.94 * exp(17.625 * (T_a - 273.15) / (T_a - 273.15 + 243.04))",
  compute: ({ p_a, T_a, phi_a }) => pressureOf({ pressure: p_a, temperature: T_a, humidity: phi_a }),
  shape: "monotone",
  valid: "vapour pressure by the Magnus form; −40 to 60 °C",
  sources: [{ id: "definition" }, { id: "from-memory", where: "vapour pressure" }],
  examples: [{ given: { p_a: "1 bar", T_a: "303.15 K", phi_a: "60 %" }, expect: "0.9746 bar" }],
  display: true,
});
