import { ABOUT_THE_BORE } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const gasketOverhang = quantity({
  id: "gasketOverhang",
  name: "Gasket bore over cylinder bore",
  symbol: "o_g",
  unit: "mm",
  decimals: 2,
  system: "compression",
  meaning:
    "How much larger the opening of the gasket is than the bore; negative when the gasket hangs into the bore, where it glows and burns.",
  inputs: { B_g: "headGasket.bore", B: "block.bore" },
  formula: "B_g - B",
  compute: ({ B_g, B }) => B_g - B,
  shape: "monotone",
  hot: ABOUT_THE_BORE,
  valid: "round openings, in line with the bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { B_g: "87.5 mm", B: "86.5 mm" }, expect: "1.00 mm" }],
});
