import { quantity } from "../../Quantity.ts";

export const compressionHeightForNewStroke = quantity({
  id: "compressionHeightForNewStroke",
  name: "Compression height for the new stroke",
  symbol: "h_c2",
  unit: "mm",
  decimals: 2,
  system: "compression",
  meaning:
    "Compression height that stops the piston at the same height as the original one did, with the new stroke and the new rod: the figure to look for in a list of pistons when the deck stays as it is.",
  inputs: { h_c1: "piston.originalCompressionHeight", Delta_hc: "compressionHeightChange" },
  formula: "h_c1 + Delta_hc",
  compute: ({ h_c1, Delta_hc }) => h_c1 + Delta_hc,
  shape: "monotone",
  valid: "same block and deck; the small effect of an offset pin line is left out",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { h_c1: "32 mm", Delta_hc: "-3.5 mm" }, expect: "28.50 mm" }],
  display: true,
});
