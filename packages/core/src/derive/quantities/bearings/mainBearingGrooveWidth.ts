import { quantity } from "../../Quantity.ts";

export const mainBearingGrooveWidth = quantity({
  id: "mainBearingGrooveWidth",
  name: "Width left for the oil groove of the main bearing",
  symbol: "w_g",
  unit: "mm",
  decimals: 2,
  system: "bearings",
  meaning:
    "What the lands on both sides leave of the length of a main bearing shell: the width of its oil groove. Below zero the lands are wider than the shell, and one of the two is misread.",
  inputs: { L: "mainBearing.length", l_g: "mainBearing.landWidth" },
  formula: "L - 2 * l_g",
  compute: ({ L, l_g }) => L - 2 * l_g,
  shape: "monotone",
  hot: { coldOnly: "shell and lands are of one metal and grow alike" },
  valid: "one groove with a land on each side",
  sources: [{ id: "definition" }],
  examples: [{ given: { L: "19 mm", l_g: "7.5 mm" }, expect: "4.00 mm" }],
});
