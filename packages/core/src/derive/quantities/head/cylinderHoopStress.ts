import { hoopStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const cylinderHoopStress = quantity({
  id: "cylinderHoopStress",
  name: "Hoop stress in the cylinder wall",
  symbol: "sigma_h",
  unit: "MPa",
  decimals: 0,
  system: "head",
  meaning: "Stress round the cylinder at its thinnest wall at peak pressure, as if nothing beside it helped.",
  inputs: { p_max: "targets.peakCylinderPressure", B: "block.bore", t_w: "block.leastWall" },
  formula: "p_max * B / (2 * t_w)",
  compute: ({ p_max, B, t_w }) => hoopStress({ pressure: p_max, bore: B, wall: t_w }),
  shape: "monotone",
  valid: "thin walls without support; peak pressure acts near the top only",
  sources: [{ id: "shigley" }],
  examples: [{ given: { p_max: "158 bar", B: "86.5 mm", t_w: "4.1 mm" }, expect: "167 MPa" }],
});
