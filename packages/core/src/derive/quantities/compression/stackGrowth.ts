import { quantity } from "../../Quantity.ts";

export const stackGrowth = quantity({
  id: "stackGrowth",
  name: "Deck clearance, cold to hot",
  symbol: "Delta_hd",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "How much the deck clearance changes from 20 °C to full load: the growth of the block less that of throw, rod and piston. Positive opens the gap, as with an aluminium block; an iron block with steel inside closes it.",
  inputs: { Delta_H: "blockGrowth", Delta_r: "throwGrowth", Delta_l: "rodGrowth", Delta_hp: "pistonGrowth" },
  formula: "Delta_H - (Delta_r + Delta_l + Delta_hp)",
  compute: ({ Delta_H, Delta_r, Delta_l, Delta_hp }) => Delta_H - (Delta_r + Delta_l + Delta_hp),
  shape: "monotone",
  valid: "one mean temperature for each part; while the engine warms up the gap can be smaller still",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { Delta_H: "0.4025 mm", Delta_r: "0.0497 mm", Delta_l: "0.1860 mm", Delta_hp: "0.0898 mm" },
      expect: "0.077 mm",
    },
  ],
  display: true,
});
