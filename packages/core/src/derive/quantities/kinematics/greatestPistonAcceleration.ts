import { greatestPistonAcceleration as accelerationOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const greatestPistonAcceleration = quantity({
  id: "greatestPistonAcceleration",
  name: "Greatest piston acceleration",
  symbol: "a_max",
  unit: "m/s2",
  decimals: 0,
  system: "kinematics",
  meaning:
    "Greatest acceleration of the piston at the highest speed intended; it comes at top dead centre. Piston, pin and rings are pulled apart by it, and a ring that is too heavy for it lifts off its groove.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", n: "targets.speed" },
  method:
    "The greatest magnitude of the exact piston acceleration over one turn, found by search over the crank angle. Without an offset it is r n² (1 + r/l), n in radians per second.",
  compute: ({ r, l, e, n }) =>
    accelerationOf({ throwRadius: r, rodLength: l, pinLineOffset: e }, n).acceleration,
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n: "7800 rpm" }, expect: "41557 m/s2" }],
});
