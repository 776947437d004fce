import { thermalGrowth } from "../../thermalGrowth.ts";

export const rodGrowth = thermalGrowth({
  id: "rodGrowth",
  name: "Growth of the rod",
  symbol: "Delta_l",
  meaning: "How much longer the rod is when it has warmed up. It closes the gap between piston and head.",
  size: ["l", "connectingRod.length", "155 mm"],
  expansion: ["alpha_r", "connectingRod.expansion", "12e-6 1/K"],
  temperature: ["T_rod", "conditions.rodTemperature", "120 degC"],
  expect: "0.186 mm",
});
