import { inletMachIndex as indexOf, speedOfSound } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inletMachIndex = quantity({
  id: "inletMachIndex",
  name: "Inlet Mach index",
  symbol: "Z",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Mean gas speed through the open inlet valves over the speed of sound. Filling falls off above about 0.5 to 0.6: then the speed of the power target is too high for the valves.",
  inputs: {
    B: "block.bore",
    n_vi: "inletValve.perCylinder",
    d_i: "inletValve.headDiameter",
    S_pP: "meanPistonSpeedAtPower",
    C_i: "induction.flowCoefficient",
    T_m: "induction.chargeTemperature",
  },
  formula: "B^2 / (n_vi * d_i^2) * S_pP / (C_i * sqrt(1.4 * 287.05 * T_m))",
  compute: ({ B, n_vi, d_i, S_pP, C_i, T_m }) =>
    indexOf({
      bore: B,
      valves: n_vi,
      valveDiameter: d_i,
      meanPistonSpeed: S_pP,
      flowCoefficient: C_i,
      speedOfSound: speedOfSound(T_m),
    }),
  shape: "monotone",
  valid: "flow coefficient as a mean over the opening, by the area of the valve heads",
  sources: [{ id: "taylor" }],
  examples: [
    {
      given: { B: "86.5 mm", n_vi: "2", d_i: "35 mm", S_pP: "23.19 m/s", C_i: "0.36", T_m: "318.2 K" },
      expect: "0.55",
    },
  ],
  display: true,
});
