import { quantity } from "../../Quantity.ts";

export const stackHeight = quantity({
  id: "stackHeight",
  name: "Stack height",
  symbol: "H_s",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "Height of the piston’s crown above the crankshaft axis at top dead centre: throw, rod and compression height stacked up. It must come out close to the deck height.",
  inputs: { y_T: "topDeadCentreHeight", h_c: "piston.compressionHeight" },
  formula: "y_T + h_c",
  compute: ({ y_T, h_c }) => y_T + h_c,
  shape: "guarded",
  valid: "cold, without bearing play",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { y_T: "191.49935 mm", h_c: "28.4 mm" }, expect: "219.899 mm" }],
  display: true,
});
