import { topDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topDeadCentreAngle = quantity({
  id: "topDeadCentreAngle",
  name: "Crank angle of top dead centre",
  symbol: "theta_T",
  unit: "deg",
  decimals: 2,
  system: "kinematics",
  meaning:
    "Crank angle at which the piston stands highest, counted from the throw standing along the cylinder. A pin or cylinder offset moves it; degree wheels are set with a stop on both sides of it.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "asin(e / (l + r))",
  compute: ({ r, l, e }) => topDeadCentre({ throwRadius: r, rodLength: l, pinLineOffset: e }).angle,
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "-0.15 deg" }],
  display: true,
});
