import { quantity } from "../../Quantity.ts";

export const strongestCriticalRatio = quantity({
  id: "strongestCriticalRatio",
  name: "Strongest critical over highest speed",
  symbol: "q_k",
  unit: "1",
  decimals: 3,
  system: "torsion",
  meaning:
    "Critical speed of the order that is half the number of cylinders, the strongest of a four-stroke engine, over the highest speed. Above 1 the engine never reaches it.",
  inputs: { f_1: "firstTorsionalFrequency", z: "block.cylinders", n: "targets.speed" },
  formula: "4 * pi * f_1 / (z * n)",
  compute: ({ f_1, z, n }) => (4 * Math.PI * f_1) / (z * n),
  shape: "guarded",
  valid: "even firing, three cylinders or more; weaker orders lie at lower speeds and are passed through",
  sources: [{ id: "den-hartog" }, { id: "taylor" }],
  examples: [{ given: { f_1: "592 Hz", z: "4", n: "14200 rpm" }, expect: "1.251" }],
});
