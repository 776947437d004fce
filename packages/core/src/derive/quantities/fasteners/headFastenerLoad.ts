import { gasForce } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const headFastenerLoad = quantity({
  id: "headFastenerLoad",
  name: "Gas load on a head fastener",
  symbol: "F_h",
  unit: "kN",
  decimals: 1,
  system: "fasteners",
  meaning: "Pull of the peak pressure inside the gasket’s opening on each fastener round one cylinder.",
  inputs: { p_max: "targets.peakCylinderPressure", B_g: "headGasket.bore", n_h: "headFastener.perCylinder" },
  formula: "p_max * pi / 4 * B_g^2 / n_h",
  compute: ({ p_max, B_g, n_h }) => gasForce({ cylinderPressure: p_max, casePressure: 0, bore: B_g }) / n_h,
  shape: "monotone",
  valid: "fasteners that share alike; neighbours do not fire together",
  sources: [{ id: "definition" }],
  examples: [{ given: { p_max: "158 bar", B_g: "87.5 mm", n_h: "4" }, expect: "23.8 kN" }],
  display: true,
});
