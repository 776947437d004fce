import { meanEffectivePressureFromTorque } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const meanPressureAtGreatestTorque = quantity({
  id: "meanPressureAtGreatestTorque",
  name: "Brake mean effective pressure at the greatest torque",
  symbol: "p_meT",
  unit: "bar",
  decimals: 2,
  system: "targets",
  meaning:
    "Mean effective pressure where torque is greatest: the highest of the whole curve, and above the one at the target power. Peak pressure and knock go with it.",
  inputs: { T_max: "greatestTorque", V_H: "engineDisplacement" },
  formula: "4 * pi * T_max / V_H",
  compute: ({ T_max, V_H }) =>
    meanEffectivePressureFromTorque({ torque: T_max, displacement: V_H, revolutionsPerCycle: 2 }),
  shape: "guarded",
  valid: "four-stroke engines: two turns in a cycle",
  sources: [{ id: "heywood" }],
  examples: [
    { given: { T_max: "600 N m", V_H: "2.2096 L" }, expect: "34.12 bar" },
    {
      given: { T_max: "257.831 N m", V_H: "5.1836 L" },
      expect: "6.25 bar",
      from: { id: "gupta", where: "Example 16.7, p. 526" },
    },
  ],
  display: true,
});
