import { quantity } from "../../Quantity.ts";

export const pistonToBoreRatio = quantity({
  id: "pistonToBoreRatio",
  name: "Piston-to-bore clearance over bore",
  symbol: "k_s",
  unit: "1",
  decimals: 5,
  system: "pistons",
  meaning:
    "Piston-to-bore clearance as a share of the bore: how makers’ rules of thumb are put, by alloy and use.",
  inputs: { C_s: "pistonToBoreClearance", B: "block.bore" },
  formula: "C_s / B",
  compute: ({ C_s, B }) => C_s / B,
  shape: "monotone",
  hot: { quantity: "skirtClearanceHot" },
  valid: "both at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { C_s: "0.09 mm", B: "86.5 mm" }, expect: "0.00104" }],
});
