import { pinShearStress as stressOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinShearStress = quantity({
  id: "pinShearStress",
  name: "Pin shear stress",
  symbol: "tau_p",
  unit: "MPa",
  decimals: 0,
  system: "pins",
  meaning:
    "Greatest shear stress in the piston pin between small end and boss at peak pressure, without relief by inertia.",
  inputs: { F_g: "gasForce", d_p: "pistonPin.outerDiameter", d_i: "pistonPin.innerDiameter" },
  formula: "0.85 * F_g * (1 + d_i / d_p + (d_i / d_p)^2) / ((1 - (d_i / d_p)^4) * d_p^2)",
  compute: ({ F_g, d_p, d_i }) => stressOf({ force: F_g, pinDiameter: d_p, pinBore: d_i }),
  shape: "monotone",
  valid: "a plain tube",
  sources: [{ id: "kolchin-demidov" }],
  examples: [{ given: { F_g: "92.8494 kN", d_p: "22 mm", d_i: "12 mm" }, expect: "330 MPa" }],
  display: true,
});
