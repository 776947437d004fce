import { quantity } from "../../Quantity.ts";

export const pistonToBoreClearance = quantity({
  id: "pistonToBoreClearance",
  name: "Piston-to-bore clearance",
  symbol: "C_s",
  unit: "mm",
  decimals: 3,
  system: "pistons",
  meaning:
    "Bore less piston diameter, both cold and at the gauge height of the piston’s maker; across the diameter, so twice the gap on each side.",
  inputs: { B: "block.bore", D: "piston.diameter" },
  formula: "B - D",
  compute: ({ B, D }) => B - D,
  shape: "monotone",
  hot: { quantity: "skirtClearanceHot" },
  valid: "both at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { B: "86.5 mm", D: "86.41 mm" }, expect: "0.090 mm" }],
});
