import { greatestPistonSpeed as speedOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const greatestPistonSpeed = quantity({
  id: "greatestPistonSpeed",
  name: "Greatest piston speed",
  symbol: "v_max",
  unit: "m/s",
  decimals: 2,
  system: "kinematics",
  meaning:
    "Highest speed that the piston reaches within a stroke, at the highest speed intended; about 1.6 times the mean piston speed.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset", n: "targets.speed" },
  method:
    "The greatest magnitude of the exact piston velocity over one turn, found by search over the crank angle.",
  compute: ({ r, l, e, n }) => speedOf({ throwRadius: r, rodLength: l, pinLineOffset: e }, n).speed,
  shape: "guarded",
  valid: "constant crankshaft speed; |e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", n: "7800 rpm" }, expect: "40.43 m/s" }],
  display: true,
});
