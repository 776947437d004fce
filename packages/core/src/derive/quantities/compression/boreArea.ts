import { boreArea as areaOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const boreArea = quantity({
  id: "boreArea",
  name: "Bore area",
  symbol: "A",
  unit: "cm2",
  decimals: 2,
  system: "compression",
  meaning: "Area of the finished bore, on which the gas presses.",
  inputs: { B: "block.bore" },
  formula: "pi / 4 * B^2",
  compute: ({ B }) => areaOf(B),
  shape: "monotone",
  valid: "round bores",
  sources: [{ id: "definition" }],
  examples: [
    { given: { B: "86.5 mm" }, expect: "58.77 cm2" },
    { given: { B: "3 in" }, expect: "7.07 in2", from: { id: "kates", where: "ch. 4, pp. 61-63" } },
  ],
  display: true,
});
