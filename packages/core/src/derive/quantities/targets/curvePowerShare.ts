import { torqueOnCurve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { curveExample, curveTables, torqueCurve } from "../../torqueCurve.ts";

export const curvePowerShare = quantity({
  id: "curvePowerShare",
  name: "Power by the torque curve over the target power",
  symbol: "q_P",
  unit: "1",
  decimals: 3,
  system: "targets",
  meaning:
    "Power that the torque curve gives at the speed of the target power, over the target power at the crankshaft. 1 where both agree; far from it, one of them is wrong, or the curve is for the wheels.",
  inputs: { P_c: "crankPower", n_P: "targets.powerSpeed" },
  tables: curveTables,
  method:
    "Torque at the speed of the target power, on a straight line between its neighbours, times that speed, over the target power.",
  compute: ({ P_c, n_P }, _words, tables) =>
    (torqueOnCurve({ curve: torqueCurve(tables), angularSpeed: n_P }) * n_P) / P_c,
  // Power turns over at its peak.
  shape: "guarded",
  valid: "a curve that reaches the speed of the target power",
  sources: [{ id: "definition" }],
  examples: [
    { given: { P_c: "440 kW", n_P: "7400 rpm", curve: curveExample }, expect: "1.000" },
    { given: { P_c: "440 kW", n_P: "7000 rpm", curve: curveExample }, expect: "0.963" },
  ],
  display: true,
});
