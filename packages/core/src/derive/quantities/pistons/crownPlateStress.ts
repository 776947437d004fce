import { heldPlateStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownPlateStress = quantity({
  id: "crownPlateStress",
  name: "Crown bending stress, edge built in",
  symbol: "sigma_cb",
  unit: "MPa",
  decimals: 0,
  system: "pistons",
  meaning:
    "Bending stress of the crown at its support at peak pressure, taken as a flat plate whose edge is built in. It overstates a crown with ribs and leaves the heat out.",
  inputs: {
    p_max: "targets.peakCylinderPressure",
    r_i: "piston.crownInnerRadius",
    t_c: "piston.crownThickness",
  },
  formula: "0.75 * p_max * (r_i / t_c)^2",
  compute: ({ p_max, r_i, t_c }) => heldPlateStress({ pressure: p_max, radius: r_i, thickness: t_c }),
  shape: "monotone",
  valid: "flat crowns; for comparing pistons of one kind",
  sources: [{ id: "timoshenko", where: "plates, from memory" }],
  examples: [{ given: { p_max: "158 bar", r_i: "22 mm", t_c: "7.6 mm" }, expect: "99 MPa" }],
  display: true,
});
