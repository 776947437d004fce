import { greatestPistonAcceleration as accelerationOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const accelerationAtOverspeed = quantity({
  id: "accelerationAtOverspeed",
  name: "Greatest acceleration at overspeed",
  symbol: "a_o",
  unit: "m/s2",
  decimals: 0,
  system: "kinematics",
  meaning:
    "Greatest acceleration of the piston at the overspeed. The rod, its bolts and the pin must stand it once, whatever the cause.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", n_o: "targets.overspeed" },
  method:
    "The greatest magnitude of the exact piston acceleration over one turn, found by search over the crank angle. Without an offset it is r n² (1 + r/l), n in radians per second.",
  compute: ({ r, l, e, n_o }) =>
    accelerationOf({ throwRadius: r, rodLength: l, pinLineOffset: e }, n_o).acceleration,
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n_o: "8200 rpm" }, expect: "45929 m/s2" }],
});
