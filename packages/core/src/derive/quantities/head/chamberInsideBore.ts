import { ABOUT_THE_BORE } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const chamberInsideBore = quantity({
  id: "chamberInsideBore",
  name: "Chamber’s edge inside the cylinder",
  symbol: "s_ch",
  unit: "mm",
  decimals: 2,
  system: "head",
  meaning:
    "How far the edge of the combustion chamber stays inside the cylinder on the side to which it is shifted; negative when the deck or the gasket stands into the chamber there.",
  inputs: { B: "block.bore", w_ch: "cylinderHead.chamberWidth", e_ch: "cylinderHead.chamberShift" },
  formula: "(B - w_ch) / 2 - e_ch",
  compute: ({ B, w_ch, e_ch }) => (B - w_ch) / 2 - e_ch,
  shape: "monotone",
  hot: ABOUT_THE_BORE,
  valid: "chambers whose widest reach lies on the side of the shift: the worst case",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { B: "86.5 mm", w_ch: "86 mm", e_ch: "0.25 mm" }, expect: "0.00 mm" }],
  display: true,
});
