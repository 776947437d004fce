import { crownStress as stressOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownStress = quantity({
  id: "crownStress",
  name: "Crown bending stress",
  symbol: "sigma_cr",
  unit: "MPa",
  decimals: 0,
  system: "pistons",
  meaning:
    "Bending stress of the crown at peak pressure, taken as a flat plate. It overstates a crown with ribs: for comparing pistons of one kind.",
  inputs: {
    p_max: "targets.peakCylinderPressure",
    r_i: "piston.crownInnerRadius",
    t_c: "piston.crownThickness",
  },
  formula: "p_max * (r_i / t_c)^2",
  compute: ({ p_max, r_i, t_c }) => stressOf({ pressure: p_max, innerRadius: r_i, thickness: t_c }),
  shape: "monotone",
  valid: "comparison only",
  sources: [{ id: "kolchin-demidov" }],
  examples: [{ given: { p_max: "158 bar", r_i: "22 mm", t_c: "7.6 mm" }, expect: "132 MPa" }],
  display: true,
});
