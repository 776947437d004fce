import { manifoldPressureNeeded as pressureOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const manifoldPressureNeeded = quantity({
  id: "manifoldPressureNeeded",
  name: "Manifold pressure needed",
  symbol: "p_mn",
  unit: "bar",
  decimals: 2,
  system: "charge",
  meaning:
    "Absolute pressure in the inlet manifold at which the engine would take in the air that the target power asks for. Above about 1 bar it takes a compressor.",
  inputs: {
    m_a: "airMassFlow",
    T_m: "induction.chargeTemperature",
    eta_v: "induction.volumetricEfficiency",
    V_H: "engineDisplacement",
    n_P: "targets.powerSpeed",
  },
  formula: "4 * pi * m_a * 287.05 * T_m / (eta_v * V_H * n_P)",
  compute: ({ m_a, T_m, eta_v, V_H, n_P }) =>
    pressureOf({
      airMassFlow: m_a,
      temperature: T_m,
      volumetricEfficiency: eta_v,
      displacement: V_H,
      angularSpeed: n_P,
      revolutionsPerCycle: 2,
    }),
  shape: "guarded",
  valid: "four-stroke engines; volumetric efficiency meant against the density in the manifold; dry air",
  sources: [{ id: "heywood" }],
  examples: [
    {
      given: { m_a: "0.4195 kg/s", T_m: "318 K", eta_v: "98 %", V_H: "2.2096 L", n_P: "7400 rpm" },
      expect: "2.87 bar",
    },
  ],
});
