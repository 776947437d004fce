import { greatestPower as greatestOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { curveExample, curveTables, straightExample, torqueCurve } from "../../torqueCurve.ts";

export const greatestPower = quantity({
  id: "greatestPower",
  name: "Greatest power on the torque curve",
  symbol: "P_max",
  unit: "kW",
  decimals: 1,
  system: "targets",
  meaning:
    "Greatest power at the crankshaft that the torque curve gives: torque times angular speed. It should be the target power, at the crankshaft.",
  inputs: {},
  tables: curveTables,
  method:
    "Torque runs straight between two rows, so power is a parabola there: the greatest of the powers at the rows and of the parabolas’ tops that lie between them.",
  compute: (_numbers, _words, tables) => greatestOf(torqueCurve(tables)).power,
  shape: "monotone",
  valid: "within the curve as entered: what lies beyond its last row is not seen",
  sources: [{ id: "definition" }],
  examples: [
    { given: { curve: curveExample }, expect: "440.2 kW" },
    { given: { curve: straightExample }, expect: "83.8 kW" },
  ],
  display: true,
});
