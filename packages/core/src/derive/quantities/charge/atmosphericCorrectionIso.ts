import { atmosphericCorrectionIso as correctionOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const atmosphericCorrectionIso = quantity({
  id: "atmosphericCorrectionIso",
  name: "Correction to standard air, other standard",
  symbol: "K_i",
  unit: "1",
  decimals: 3,
  system: "charge",
  meaning:
    "The same correction by the standard that is usual outside America; the two differ by less than 1 % in usual air. A power figure should say by which it was corrected.",
  inputs: { p_d: "dryAirPressure", T_a: "conditions.ambientTemperature" },
  formula: "(99000 / p_d)^1.2 * (T_a / 298.15)^0.6",
  compute: ({ p_d, T_a }) => correctionOf({ dryPressure: p_d, temperature: T_a }),
  shape: "monotone",
  valid: "engines without boost; from 0.93 to 1.07",
  sources: [{ id: "iso-1585" }],
  examples: [{ given: { p_d: "96 kPa", T_a: "303 K" }, expect: "1.048" }],
  display: true,
});
