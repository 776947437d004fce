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
  method:
    "Ambient pressure less the relative humidity times the saturation pressure of water by the Magnus form.",
  compute: ({ p_a, T_a, phi_a }) => pressureOf({ pressure: p_a, temperature: T_a, humidity: phi_a }),
  shape: "monotone",
  valid: "−40 to 60 °C",
  sources: [{ id: "definition" }, { id: "from-memory", where: "vapour pressure" }],
  examples: [{ given: { p_a: "1 bar", T_a: "303.15 K", phi_a: "60 %" }, expect: "0.9746 bar" }],
  display: true,
});
