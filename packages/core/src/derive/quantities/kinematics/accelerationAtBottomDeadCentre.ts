import { bottomDeadCentre, pistonAcceleration } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const accelerationAtBottomDeadCentre = quantity({
  id: "accelerationAtBottomDeadCentre",
  name: "Piston acceleration at bottom dead centre",
  symbol: "a_B",
  unit: "m/s2",
  decimals: 0,
  system: "kinematics",
  meaning:
    "Acceleration of the piston away from the crankshaft at bottom dead centre, at the highest speed intended: there it presses hardest on the rod. The longer the rod, the nearer it comes to that at top dead centre.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", n: "targets.speed" },
  formula: "r * n^2 * (1 - r / l) / sqrt(1 - (e / (l - r))^2)",
  compute: ({ r, l, e, n }) => {
    const crank = { throwRadius: r, rodLength: l, pinLineOffset: e };
    return pistonAcceleration(crank, bottomDeadCentre(crank).angle, n);
  },
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n: "7800 rpm" }, expect: "21159 m/s2" }],
  display: true,
});
