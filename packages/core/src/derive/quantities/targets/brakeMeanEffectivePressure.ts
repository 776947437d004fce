import { brakeMeanEffectivePressure as pressureOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const brakeMeanEffectivePressure = quantity({
  id: "brakeMeanEffectivePressure",
  name: "Brake mean effective pressure",
  symbol: "p_me",
  unit: "bar",
  decimals: 2,
  system: "targets",
  meaning:
    "Mean pressure that would have to push every piston through one stroke in each cycle to give the target power. It puts engines of all sizes and speeds on one scale: how hard each cubic centimetre is made to work.",
  inputs: { P_c: "crankPower", V_H: "engineDisplacement", n_P: "targets.powerSpeed" },
  formula: "4 * pi * P_c / (V_H * n_P)",
  compute: ({ P_c, V_H, n_P }) =>
    pressureOf({ power: P_c, displacement: V_H, angularSpeed: n_P, revolutionsPerCycle: 2 }),
  shape: "guarded",
  valid: "four-stroke engines: two turns in a cycle",
  sources: [{ id: "heywood" }],
  examples: [
    { given: { P_c: "440 kW", V_H: "2.2096 L", n_P: "7400 rpm" }, expect: "32.29 bar" },
    {
      given: { P_c: "17.593 kW", V_H: "961.33 cm3", n_P: "3000 rpm" },
      expect: "7.32 bar",
      from: { id: "gupta", where: "Example 16.4, p. 522" },
    },
    {
      given: { P_c: "250 kW", V_H: "25 L", n_P: "2000 rpm" },
      expect: "6 bar",
      from: { id: "rajput", where: "Example 17.7, p. 573" },
    },
  ],
});
