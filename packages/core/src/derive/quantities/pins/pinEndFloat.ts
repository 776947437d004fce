import { pinEndFloat as floatOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pinEndFloat = quantity({
  id: "pinEndFloat",
  name: "Pin end float",
  symbol: "E_p",
  unit: "mm",
  decimals: 2,
  system: "pins",
  meaning:
    "Play of the pin along its axis between the two retainers. Without any, the pin pushes a retainer out of its groove and both score the cylinder.",
  inputs: { L_rg: "piston.retainerSpan", t_r: "piston.retainerThickness", l_p: "pistonPin.length" },
  formula: "L_rg - 2 * t_r - l_p",
  compute: ({ L_rg, t_r, l_p }) => floatOf({ retainerSpan: L_rg, retainerThickness: t_r, pinLength: l_p }),
  shape: "monotone",
  hot: { quantity: "pinEndFloatHot" },
  valid:
    "flat retainers against a pin with square ends; for round wire and a chamfered pin measure the float",
  sources: [{ id: "definition" }],
  examples: [{ given: { L_rg: "59.85 mm", t_r: "1.6 mm", l_p: "56.4 mm" }, expect: "0.25 mm" }],
});
