import { quantity } from "../../Quantity.ts";

export const gasketCrush = quantity({
  id: "gasketCrush",
  name: "Crush of the head gasket",
  symbol: "Delta_tg",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How much thinner the head gasket is when it is tightened. Negative when the compressed thickness is the larger, which cannot be.",
  inputs: { t_g0: "headGasket.freeThickness", t_g: "headGasket.compressedThickness" },
  formula: "t_g0 - t_g",
  compute: ({ t_g0, t_g }) => t_g0 - t_g,
  shape: "monotone",
  valid: "any gasket",
  sources: [{ id: "definition" }],
  examples: [{ given: { t_g0: "1.20 mm", t_g: "1.02 mm" }, expect: "0.180 mm" }],
});
