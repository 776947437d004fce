import { pinBendingStress as stressOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinBendingStress = quantity({
  id: "pinBendingStress",
  name: "Pin bending stress",
  symbol: "sigma_b",
  unit: "MPa",
  decimals: 0,
  system: "pins",
  meaning:
    "Greatest bending stress in the piston pin at peak pressure, the pin taken as a beam that the small end presses down between the two bosses.",
  inputs: {
    F_g: "gasForce",
    d_p: "pistonPin.outerDiameter",
    d_i: "pistonPin.innerDiameter",
    l_p: "pistonPin.length",
    s_b: "piston.bossSpacing",
    b_se: "connectingRod.smallEndWidth",
  },
  formula: "F_g * (l_p + 2 * s_b - 1.5 * b_se) / (1.2 * (1 - (d_i / d_p)^4) * d_p^3)",
  compute: ({ F_g, d_p, d_i, l_p, s_b, b_se }) =>
    stressOf({
      force: F_g,
      pinDiameter: d_p,
      pinBore: d_i,
      pinLength: l_p,
      bossDistance: s_b,
      smallEndWidth: b_se,
    }),
  shape: "monotone",
  valid:
    "stiff bosses: a boss that gives lowers it; a pin longer than the space between the bosses and at least as long as the small end is wide",
  sources: [{ id: "kolchin-demidov" }],
  examples: [
    {
      given: { F_g: "92.8494 kN", d_p: "22 mm", d_i: "12 mm", l_p: "56.4 mm", s_b: "24 mm", b_se: "22 mm" },
      expect: "569 MPa",
    },
  ],
});
