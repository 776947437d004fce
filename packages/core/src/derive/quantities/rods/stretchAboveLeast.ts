import { quantity } from "../../Quantity.ts";

export const stretchAboveLeast = quantity({
  id: "stretchAboveLeast",
  name: "Stretch above the least",
  symbol: "Delta_f1",
  unit: "mm",
  decimals: 3,
  system: "rods",
  meaning:
    "Measured stretch of the rod bolt less the lower end of its maker’s window; negative when the bolt is too loose.",
  inputs: { f_b: "rodBolt.stretch", f_min: "rodBolt.leastStretch" },
  formula: "f_b - f_min",
  compute: ({ f_b, f_min }) => f_b - f_min,
  shape: "monotone",
  valid: "stretch gauge, against the bolt’s own free length",
  sources: [{ id: "definition" }],
  examples: [{ given: { f_b: "0.17 mm", f_min: "0.16 mm" }, expect: "0.010 mm" }],
});
