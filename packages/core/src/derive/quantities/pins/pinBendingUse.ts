import { quantity } from "../../Quantity.ts";

export const pinBendingUse = quantity({
  id: "pinBendingUse",
  name: "Use of the pin’s allowable stress",
  symbol: "k_pin",
  unit: "1",
  decimals: 3,
  system: "pins",
  meaning:
    "Bending stress in the pin over the stress that its maker allows; above 1 the pin is too weak for the peak pressure.",
  inputs: { sigma_b: "pinBendingStress", R_pin: "pistonPin.allowableStress" },
  formula: "sigma_b / R_pin",
  compute: ({ sigma_b, R_pin }) => sigma_b / R_pin,
  shape: "monotone",
  valid: "the maker’s figure meant for bending at peak pressure",
  sources: [{ id: "definition" }],
  examples: [{ given: { sigma_b: "569.22 MPa", R_pin: "750 MPa" }, expect: "0.759" }],
});
