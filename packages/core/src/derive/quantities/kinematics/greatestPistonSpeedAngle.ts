import { greatestBetween, pistonVelocity } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const greatestPistonSpeedAngle = quantity({
  id: "greatestPistonSpeedAngle",
  name: "Crank angle of the greatest piston speed",
  symbol: "theta_v",
  unit: "deg",
  decimals: 1,
  system: "kinematics",
  meaning:
    "Crank angle after top dead centre at which the piston moves fastest on its way down; the inlet valve had better be well open there.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  method:
    "Where the piston’s speed is greatest between the dead centres, found by search over the crank angle; nearly where rod and throw stand at a right angle.",
  compute: ({ r, l, e }) => {
    const crank = { throwRadius: r, rodLength: l, pinLineOffset: e };
    return greatestBetween((angle) => -pistonVelocity(crank, angle, 1), 0, Math.PI).at;
  },
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "73.3 deg" }],
  display: true,
  nominalOnly: true,
});
