import { quantity } from "../../Quantity.ts";

export const pinPressInterference = quantity({
  id: "pinPressInterference",
  name: "Interference of a pressed pin",
  symbol: "delta_pr",
  unit: "um",
  decimals: 1,
  system: "pins",
  meaning:
    "Pin diameter less the bore of the small end, cold, of a pin that is pressed into the rod; negative for a floating one.",
  inputs: { C_ps: "pinInSmallEndClearance" },
  formula: "-C_ps",
  compute: ({ C_ps }) => -C_ps,
  shape: "monotone",
  hot: { quantity: "pinInSmallEndClearanceHot" },
  valid: "both at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { C_ps: "-44 um" }, expect: "44.0 um" }],
});
