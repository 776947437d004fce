import { quantity } from "../../Quantity.ts";

export const pinShearUse = quantity({
  id: "pinShearUse",
  name: "Use of the pin’s shear strength",
  symbol: "k_tau",
  unit: "1",
  decimals: 3,
  system: "pins",
  meaning:
    "Shear stress of the piston pin over what its steel may bear in shear, 0.577 of its allowable bending stress.",
  inputs: { tau_p: "pinShearStress", R_pin: "pistonPin.allowableStress" },
  formula: "tau_p / (R_pin / sqrt(3))",
  compute: ({ tau_p, R_pin }) => tau_p / (R_pin / Math.sqrt(3)),
  shape: "monotone",
  valid: "ductile steel: distortion energy",
  sources: [{ id: "shigley" }],
  examples: [{ given: { tau_p: "434 MPa", R_pin: "750 MPa" }, expect: "1.002" }],
});
