import { atmosphericCorrection as correctionOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const atmosphericCorrection = quantity({
  id: "atmosphericCorrection",
  name: "Correction to standard air",
  symbol: "K_a",
  unit: "1",
  decimals: 3,
  system: "charge",
  meaning:
    "Factor by which a power measured in this air is multiplied to compare it with figures in standard air (99 kPa dry, 25 °C), for engines without boost. Above 1 the air is thinner than standard, and the engine gives less than its figure.",
  inputs: { p_d: "dryAirPressure", T_a: "conditions.ambientTemperature" },
  formula: "1.18 * (99000 / p_d) * sqrt(T_a / 298.15) - 0.18",
  compute: ({ p_d, T_a }) => correctionOf({ dryPressure: p_d, temperature: T_a }),
  shape: "monotone",
  valid:
    "engines without boost; charged engines follow clauses of their own. Between about 0.93 and 1.07 it may be trusted",
  sources: [{ id: "sae-j1349" }],
  examples: [
    { given: { p_d: "96 kPa", T_a: "303 K" }, expect: "1.047" },
    {
      given: { p_d: "990 mbar", T_a: "25 degC" },
      expect: "1",
      from: { id: "sae-j1349", where: "reference air" },
    },
  ],
  display: true,
});
