import { dwellAtTopDeadCentre as dwellOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const dwellAtTopDeadCentre = quantity({
  id: "dwellAtTopDeadCentre",
  name: "Dwell about top dead centre",
  symbol: "Delta_theta",
  unit: "deg",
  decimals: 1,
  system: "kinematics",
  meaning:
    "Crank angle over which the piston stays within 0.5 mm of top dead centre. A long rod dwells longer: the charge burns nearer to constant volume, and knocks sooner.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  method:
    "Crank angles at which the piston stands 0.5 mm below its top dead centre on the way up and on the way down, one taken from the other.",
  compute: ({ r, l, e }) => dwellOf({ throwRadius: r, rodLength: l, pinLineOffset: e }, 0.5e-3),
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "0 mm" }, expect: "14.5 deg" }],
  display: true,
});
