import { registerStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainCapRegisterStress = quantity({
  id: "mainCapRegisterStress",
  name: "Stress of the cap by its register",
  symbol: "sigma_r",
  unit: "MPa",
  decimals: 0,
  system: "main-caps",
  meaning:
    "Pressure stress in the cap by its tight fit in the register, the block taken as stiff. Too tight spreads the block and pinches the bearing; no fit lets the cap walk.",
  inputs: { E_cap: "mainCap.modulus", delta_r: "mainCap.registerInterference", w_c: "mainCap.registerWidth" },
  formula: "E_cap * max(0, delta_r) / w_c",
  compute: ({ E_cap, delta_r, w_c }) =>
    registerStress({ elasticModulus: E_cap, interference: delta_r, width: w_c }),
  shape: "monotone",
  valid: "upper bound: the block gives way",
  sources: [{ id: "definition" }],
  examples: [{ given: { E_cap: "206 GPa", delta_r: "0.045 mm", w_c: "110 mm" }, expect: "84 MPa" }],
  display: true,
});
