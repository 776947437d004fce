import { tracePeak } from "@trialfit/mechanics";
import {
  pressureTrace,
  pressureTraceExample,
  pressureTraceInputs,
  pressureTraceMethod,
} from "../../pressureTrace.ts";
import { quantity } from "../../Quantity.ts";

export const peakPressureAngle = quantity({
  id: "peakPressureAngle",
  name: "Crank angle of the peak pressure",
  symbol: "theta_pk",
  unit: "deg",
  decimals: 1,
  system: "targets",
  meaning:
    "Crank angle after top dead centre at which the peak pressure lies, by the burning entered. Engines give most for their peak at about 12 to 18° (from memory); an earlier peak loads the parts more for the same power, and knocks.",
  inputs: pressureTraceInputs,
  method: `${pressureTraceMethod} The angle is where it is greatest.`,
  compute: (numbers) => tracePeak(pressureTrace(numbers)).angle,
  shape: "guarded",
  valid: "spark ignition without knock; follows start and duration of burning",
  sources: [{ id: "heywood", where: "ch. 9 and 12" }, { id: "from-memory" }],
  examples: [{ given: pressureTraceExample, expect: "19.4 deg" }],
  display: true,
  nominalOnly: true,
});
