import { greatestTorque } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { curveExample, curveTables, curveValid, torqueCurve } from "../../torqueCurve.ts";

export const greatestTorqueSpeed = quantity({
  id: "greatestTorqueSpeed",
  name: "Speed of the greatest torque",
  symbol: "n_T",
  unit: "rpm",
  decimals: 0,
  system: "targets",
  meaning:
    "Crankshaft speed at which the torque curve is highest: there the cylinders fill best. Where the curve is flat at its top, the lowest such speed.",
  inputs: {},
  tables: curveTables,
  method: "The speed of the row with the greatest torque; of several alike the lowest.",
  compute: (_numbers, _words, tables) => greatestTorque(torqueCurve(tables)).angularSpeed,
  shape: "monotone",
  valid: curveValid,
  sources: [{ id: "definition" }],
  examples: [
    { given: { curve: curveExample }, expect: "5500 rpm" },
    { given: { curve: "1800 rpm, 400 N m; 4500 rpm, 400 N m; 5200 rpm, 380 N m" }, expect: "1800 rpm" },
  ],
  display: true,
});
