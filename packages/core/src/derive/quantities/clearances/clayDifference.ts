import { quantity } from "../../Quantity.ts";

export const clayDifference = quantity({
  id: "clayDifference",
  name: "Clay against computation",
  symbol: "Delta_cl",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning: "How far the rod clearance found with clay lies from the computed one, whichever way.",
  inputs: { c_cl: "block.rodClearanceByClay", c_rb: "rodToCylinderClearance" },
  formula: "abs(c_cl - c_rb)",
  compute: ({ c_cl, c_rb }) => Math.abs(c_cl - c_rb),
  shape: "guarded",
  valid: "the same notch in both, if there is one",
  sources: [{ id: "definition" }],
  examples: [{ given: { c_cl: "1.60 mm", c_rb: "1.12 mm" }, expect: "0.48 mm" }],
});
