import { quantity } from "../../Quantity.ts";

export const rodSpeedUse = quantity({
  id: "rodSpeedUse",
  name: "Use of the rod’s rated speed",
  symbol: "k_rod",
  unit: "1",
  decimals: 3,
  system: "targets",
  meaning:
    "Overspeed over the speed for which the rod’s maker rates it. Above 1 the rod is asked for more than its maker vouches for.",
  inputs: { n_o: "targets.overspeed", n_rod: "connectingRod.ratedSpeed" },
  formula: "n_o / n_rod",
  compute: ({ n_o, n_rod }) => n_o / n_rod,
  shape: "monotone",
  valid: "pistons and pins no heavier, and a stroke no longer, than the rating assumes",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_o: "8200 rpm", n_rod: "8500 rpm" }, expect: "0.965" }],
});
