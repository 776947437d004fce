import { knockIntegral as integralOf } from "@trialfit/mechanics";
import {
  FRESH_RATIO,
  pressureTrace,
  pressureTraceExample,
  pressureTraceInputs,
  pressureTraceMethod,
} from "../../pressureTrace.ts";
import { quantity } from "../../Quantity.ts";

export const knockIntegral = quantity({
  id: "knockIntegral",
  name: "Knock integral",
  symbol: "I_k",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Share of the time to its own ignition that the last unburnt charge has lived through when burning ends; at 1 the model would call knock. It compares two versions of one engine, say before and after a change of ratio, octane or charge temperature, and predicts nothing for one alone.",
  inputs: { ...pressureTraceInputs, RON: "fuel.researchOctane" },
  method: `${pressureTraceMethod} The unburnt charge is compressed adiabatically by it; the time to ignition is 17.68 ms (RON/100)^3.402 p^-1.7 exp(3800 K / T), p in atmospheres, and the integral of time over it is taken from inlet closing to the end of burning.`,
  compute: ({ RON, ...trace }) =>
    integralOf({
      run: pressureTrace(trace).closed,
      chargeTemperature: trace.T_ic,
      heatCapacityRatio: FRESH_RATIO,
      octane: RON,
      angularSpeed: trace.n_P,
      until: trace.theta_bs + trace.theta_bd,
    }),
  shape: "guarded",
  valid:
    "fitted to petrol up to octane 100; fuels that cool the charge, alcohols first of all, bear more than it says. For comparison only",
  sources: [{ id: "heywood", where: "ch. 9: Douaud and Eyzat, Livengood and Wu" }],
  examples: [{ given: { ...pressureTraceExample, RON: "98" }, expect: "2.30" }],
  display: true,
});
