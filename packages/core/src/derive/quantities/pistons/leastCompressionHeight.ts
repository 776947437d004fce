import { quantity } from "../../Quantity.ts";

export const leastCompressionHeight = quantity({
  id: "leastCompressionHeight",
  name: "Least compression height for the ring pack",
  symbol: "h_cm",
  unit: "mm",
  decimals: 2,
  system: "pistons",
  meaning:
    "Compression height at which the pin bore just touches the lower edge of the oil ring groove. Below it the groove needs a support rail.",
  inputs: { h_rp: "ringPackDepth", d_b: "piston.pinBore" },
  formula: "h_rp + d_b / 2",
  compute: ({ h_rp, d_b }) => h_rp + d_b / 2,
  shape: "monotone",
  valid: "a pin bore that reaches under the groove",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { h_rp: "19.09 mm", d_b: "22 mm" }, expect: "30.09 mm" }],
  display: true,
});
