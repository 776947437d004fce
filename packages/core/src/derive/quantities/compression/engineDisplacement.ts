import { engineDisplacement as displacementOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const engineDisplacement = quantity({
  id: "engineDisplacement",
  name: "Engine displacement",
  symbol: "V_H",
  unit: "L",
  decimals: 3,
  system: "compression",
  meaning: "Swept volume of all cylinders together.",
  inputs: { B: "block.bore", S_0: "crankshaft.stroke", z: "block.cylinders" },
  formula: "z * pi / 4 * B^2 * S_0",
  compute: ({ B, S_0, z }) => displacementOf({ bore: B, stroke: S_0, cylinders: z }),
  shape: "monotone",
  valid: "cylinders all alike; stroke as on the crankshaft's sheet",
  sources: [{ id: "definition" }],
  examples: [
    { given: { B: "86.5 mm", S_0: "94.0006293 mm", z: "4" }, expect: "2.210 L" },
    {
      given: { B: "68 mm", S_0: "75 mm", z: "4" },
      expect: "1089.5 cm3",
      from: { id: "mathur-sharma", where: "Example 1.1" },
    },
  ],
});
