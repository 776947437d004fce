import { fireRingLineLoad } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const fireRingLoad = quantity({
  id: "fireRingLoad",
  name: "Line load left on the fire ring",
  symbol: "q_l",
  unit: "N/mm",
  decimals: 0,
  system: "head",
  meaning:
    "Force on each length of the ring that seals the cylinder, left at peak pressure. The gasket’s maker says what it needs.",
  inputs: {
    n_h: "headFastener.perCylinder",
    F_vh: "headPreload",
    p_max: "targets.peakCylinderPressure",
    B_g: "headGasket.bore",
    q_fr: "headGasket.clampShare",
  },
  formula: "q_fr * (n_h * F_vh - p_max * pi / 4 * B_g^2) / (pi * B_g)",
  compute: ({ n_h, F_vh, p_max, B_g, q_fr }) =>
    fireRingLineLoad({
      fasteners: n_h,
      preload: F_vh,
      peakPressure: p_max,
      sealDiameter: B_g,
      clampShare: q_fr,
    }),
  shape: "guarded",
  valid: "a stiff head; every fastener round the cylinder counted whole",
  sources: [{ id: "definition" }],
  examples: [
    {
      given: { n_h: "4", F_vh: "66 kN", p_max: "158 bar", B_g: "87.5 mm", q_fr: "100 %" },
      expect: "615 N/mm",
    },
  ],
  display: true,
});
