import { thermalGrowth } from "../../thermalGrowth.ts";

export const blockGrowth = thermalGrowth({
  id: "blockGrowth",
  name: "Growth of the deck height",
  symbol: "Delta_H",
  meaning:
    "How much the deck moves away from the crankshaft when the block warms up. It opens the gap between piston and head.",
  size: ["H", "block.deckHeight", "234 mm"],
  expansion: ["alpha_b", "block.expansion", "21.5e-6 1/K"],
  temperature: ["T_b", "conditions.blockTemperature", "100 degC"],
  expect: "0.402 mm",
});
