import { bottomDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bottomDeadCentreAngle = quantity({
  id: "bottomDeadCentreAngle",
  name: "Crank angle of bottom dead centre",
  symbol: "theta_B",
  unit: "deg",
  decimals: 2,
  system: "kinematics",
  meaning:
    "Crank angle at which the piston stands lowest, counted from the throw standing along the cylinder, upwards.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "pi + asin(e / (l - r))",
  compute: ({ r, l, e }) => bottomDeadCentre({ throwRadius: r, rodLength: l, pinLineOffset: e }).angle,
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "179.71 deg" }],
  display: true,
});
