import { quantity } from "../../Quantity.ts";

export const topLandClearance = quantity({
  id: "topLandClearance",
  name: "Top land clearance",
  symbol: "C_tl",
  unit: "mm",
  decimals: 3,
  system: "pistons",
  meaning:
    "Clearance of the piston’s top land in the cylinder, cold, on the diameter: what is there before the hottest part of the piston grows.",
  inputs: { B: "block.bore", D_tl: "piston.topLandDiameter" },
  formula: "B - D_tl",
  compute: ({ B, D_tl }) => B - D_tl,
  shape: "monotone",
  hot: { quantity: "topLandClearanceHot" },
  valid: "round land and cylinder, at about 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { B: "86.5 mm", D_tl: "85.85 mm" }, expect: "0.650 mm" }],
  display: true,
});
