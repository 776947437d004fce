import { sweptVolume as volumeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const sweptVolume = quantity({
  id: "sweptVolume",
  name: "Swept volume of one cylinder",
  symbol: "V_d",
  unit: "cm3",
  decimals: 1,
  system: "compression",
  meaning: "Volume through which one piston moves: bore area times true piston stroke.",
  inputs: { B: "block.bore", S: "pistonStroke" },
  formula: "pi / 4 * B^2 * S",
  compute: ({ B, S }) => volumeOf({ bore: B, stroke: S }),
  shape: "guarded",
  valid: "round bores",
  sources: [{ id: "definition" }],
  examples: [{ given: { B: "86.5 mm", S: "94.0006293 mm" }, expect: "552.4 cm3" }],
});
