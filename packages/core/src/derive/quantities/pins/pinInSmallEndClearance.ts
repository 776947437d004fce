import { quantity } from "../../Quantity.ts";

export const pinInSmallEndClearance = quantity({
  id: "pinInSmallEndClearance",
  name: "Pin clearance in the small end",
  symbol: "C_ps",
  unit: "um",
  decimals: 1,
  system: "pins",
  meaning:
    "Bore of the small-end bush less pin diameter, cold; across the diameter. Negative for a pin that is pressed into the rod.",
  inputs: { d_se: "connectingRod.smallEndBore", d_p: "pistonPin.outerDiameter" },
  formula: "d_se - d_p",
  compute: ({ d_se, d_p }) => d_se - d_p,
  shape: "monotone",
  hot: { quantity: "pinInSmallEndClearanceHot" },
  valid: "both at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { d_se: "22.012 mm", d_p: "22 mm" }, expect: "12.0 um" }],
});
