import { quantity } from "../../Quantity.ts";

export const stretchBelowMost = quantity({
  id: "stretchBelowMost",
  name: "Stretch below the greatest",
  symbol: "Delta_f2",
  unit: "mm",
  decimals: 3,
  system: "rods",
  meaning:
    "Upper end of the maker’s window less the measured stretch of the rod bolt; negative when the bolt has been stretched too far.",
  inputs: { f_max: "rodBolt.mostStretch", f_b: "rodBolt.stretch" },
  formula: "f_max - f_b",
  compute: ({ f_max, f_b }) => f_max - f_b,
  shape: "monotone",
  valid: "stretch gauge, against the bolt’s own free length",
  sources: [{ id: "definition" }],
  examples: [{ given: { f_max: "0.18 mm", f_b: "0.17 mm" }, expect: "0.010 mm" }],
});
