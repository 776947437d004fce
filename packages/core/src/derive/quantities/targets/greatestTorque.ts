import { greatestTorque as greatestOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { curveExample, curveTables, curveValid, straightExample, torqueCurve } from "../../torqueCurve.ts";

export const greatestTorque = quantity({
  id: "greatestTorque",
  name: "Greatest torque",
  symbol: "T_max",
  unit: "N m",
  decimals: 0,
  system: "targets",
  meaning:
    "Greatest torque at the crankshaft on the torque curve. Gas loads are highest near its speed, and it is what clutch and gearbox must carry.",
  inputs: {},
  tables: curveTables,
  method: "The greatest torque of the rows.",
  compute: (_numbers, _words, tables) => greatestOf(torqueCurve(tables)).torque,
  shape: "monotone",
  valid: curveValid,
  sources: [{ id: "definition" }],
  examples: [
    { given: { curve: curveExample }, expect: "600 N m" },
    { given: { curve: straightExample }, expect: "350 N m" },
  ],
  display: true,
});
