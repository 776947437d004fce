import { greatestPower } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { curveExample, curveTables, straightExample, torqueCurve } from "../../torqueCurve.ts";

export const greatestPowerSpeed = quantity({
  id: "greatestPowerSpeed",
  name: "Speed of the greatest power on the torque curve",
  symbol: "n_Pmax",
  unit: "rpm",
  decimals: 0,
  system: "targets",
  meaning:
    "Crankshaft speed at which the torque curve gives its greatest power. Above it torque falls faster than speed rises.",
  inputs: {},
  tables: curveTables,
  method: "Where the greatest power on the torque curve lies; of several alike the lowest speed.",
  compute: (_numbers, _words, tables) => greatestPower(torqueCurve(tables)).angularSpeed,
  shape: "monotone",
  valid: "within the curve as entered: what lies beyond its last row is not seen",
  sources: [{ id: "definition" }],
  examples: [
    { given: { curve: curveExample }, expect: "7400 rpm" },
    { given: { curve: straightExample }, expect: "4000 rpm" },
  ],
  display: true,
});
