import { headClampRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const headClampRatio = quantity({
  id: "headClampRatio",
  name: "Clamp of the head over gas force",
  symbol: "R_h",
  unit: "1",
  decimals: 2,
  system: "head",
  meaning:
    "Preload of the head fasteners that belong to one cylinder over the force with which peak pressure lifts the head inside the gasket’s opening.",
  inputs: {
    n_h: "headFastener.perCylinder",
    F_vh: "headPreload",
    p_max: "targets.peakCylinderPressure",
    B_g: "headGasket.bore",
  },
  formula: "n_h * F_vh / (p_max * pi / 4 * B_g^2)",
  compute: ({ n_h, F_vh, p_max, B_g }) =>
    ratioOf({ fasteners: n_h, preload: F_vh, peakPressure: p_max, sealDiameter: B_g }),
  shape: "monotone",
  valid:
    "every fastener round the cylinder counted whole, as the limits are: neighbours do not fire together; a fastener shared by two cylinders has less to give than this says; a gasket sealed at its opening",
  sources: [{ id: "vdi-2230" }],
  examples: [{ given: { n_h: "4", F_vh: "66 kN", p_max: "158 bar", B_g: "87.5 mm" }, expect: "2.78" }],
});
