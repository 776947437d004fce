import { quantity } from "../../Quantity.ts";

export const crankRatio = quantity({
  id: "crankRatio",
  name: "Throw over rod length",
  symbol: "lambda",
  unit: "1",
  decimals: 4,
  system: "kinematics",
  meaning:
    "Throw radius over rod length, the measure that textbooks use where builders quote the rod ratio: the second order of the piston’s motion is about a fourth of it.",
  inputs: { r: "throwRadius", l: "connectingRod.length" },
  formula: "r / l",
  compute: ({ r, l }) => r / l,
  shape: "monotone",
  valid: "any slider-crank",
  sources: [{ id: "definition" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm" }, expect: "0.3253" }],
  display: true,
});
