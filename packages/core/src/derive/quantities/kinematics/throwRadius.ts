import { quantity } from "../../Quantity.ts";

export const throwRadius = quantity({
  id: "throwRadius",
  name: "Throw radius",
  symbol: "r",
  unit: "mm",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Distance from the crankshaft axis to the crankpin axis: half the stroke on the crankshaft's sheet.",
  inputs: { S_0: "crankshaft.stroke" },
  formula: "S_0 / 2",
  compute: ({ S_0 }) => S_0 / 2,
  shape: "monotone",
  valid: "any crankshaft",
  sources: [{ id: "definition" }],
  examples: [{ given: { S_0: "94 mm" }, expect: "47.000 mm" }],
});
