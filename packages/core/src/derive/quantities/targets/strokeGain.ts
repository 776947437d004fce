import { quantity } from "../../Quantity.ts";

export const strokeGain = quantity({
  id: "strokeGain",
  name: "Stroke gain",
  symbol: "Delta_S",
  unit: "mm",
  decimals: 2,
  system: "targets",
  meaning:
    "Stroke of the crankshaft that will be used less the stroke that the block was made with; positive for a longer stroke. Every clearance round the rod and below the piston is in question once it is not zero.",
  inputs: { S_0: "crankshaft.stroke", S_1: "crankshaft.originalStroke" },
  formula: "S_0 - S_1",
  compute: ({ S_0, S_1 }) => S_0 - S_1,
  shape: "monotone",
  valid: "both strokes as on the crankshafts’ sheets",
  sources: [{ id: "definition" }],
  examples: [{ given: { S_0: "94 mm", S_1: "88 mm" }, expect: "6.00 mm" }],
});
