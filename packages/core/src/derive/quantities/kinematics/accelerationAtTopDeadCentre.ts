import { pistonAcceleration, topDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const accelerationAtTopDeadCentre = quantity({
  id: "accelerationAtTopDeadCentre",
  name: "Piston acceleration at top dead centre",
  symbol: "a_T",
  unit: "m/s2",
  decimals: 0,
  system: "kinematics",
  meaning:
    "Acceleration of the piston towards the crankshaft at top dead centre, at the highest speed intended: there it pulls hardest at pin, rod and cap.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", n: "targets.speed" },
  formula: "r * n^2 * (1 + r / l) / sqrt(1 - (e / (l + r))^2)",
  compute: ({ r, l, e, n }) => {
    const crank = { throwRadius: r, rodLength: l, pinLineOffset: e };
    return -pistonAcceleration(crank, topDeadCentre(crank).angle, n);
  },
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n: "7800 rpm" }, expect: "41557 m/s2" }],
  display: true,
});
