import { pressureTraceForWork, tracePeak } from "@trialfit/mechanics";
import { workingCycle, workingCycleExample, workingCycleInputs } from "../../pressureTrace.ts";
import { quantity } from "../../Quantity.ts";

/** Peak of a strong cycle over that of the mean one. */
const CYCLE_TO_CYCLE = 1.1;

export const peakPressureEstimate = quantity({
  id: "peakPressureEstimate",
  name: "Peak pressure by the working cycle",
  symbol: "p_pe",
  unit: "bar",
  decimals: 0,
  system: "targets",
  meaning:
    "Peak cylinder pressure that a working cycle of the target power would have, strong cycles counted. It stands beside the peak pressure entered for the strength checks and does not replace it.",
  inputs: { ...workingCycleInputs, p_mi: "indicatedMeanEffectivePressure" },
  method:
    "A single-zone model of the cylinder: compression from inlet closing, heat by a Wiebe function over the burning, heat to the walls by Woschni’s correlation. The heat is scaled until the work over compression and expansion is the indicated mean effective pressure; the peak is raised by a tenth, for single cycles burn faster than the mean.",
  compute: ({ p_mi, ...cycle }) =>
    CYCLE_TO_CYCLE * tracePeak(pressureTraceForWork(workingCycle(cycle), p_mi)).pressure,
  shape: "guarded",
  valid:
    "spark ignition without knock; within about 15 %, most of it from start and duration of burning. Knock adds half as much again and more",
  sources: [
    { id: "heywood", where: "ch. 9 and 12" },
    { id: "from-memory", where: "spread from cycle to cycle" },
  ],
  examples: [{ given: { ...workingCycleExample, p_mi: "37.11 bar" }, expect: "157 bar" }],
  display: true,
});
