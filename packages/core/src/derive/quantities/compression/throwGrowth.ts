import { thermalGrowth } from "../../thermalGrowth.ts";

export const throwGrowth = thermalGrowth({
  id: "throwGrowth",
  name: "Growth of the throw",
  symbol: "Delta_r",
  meaning:
    "How much the throw of the crankshaft grows when it warms up. It closes the gap between piston and head.",
  size: ["r", "throwRadius", "46 mm"],
  expansion: ["alpha_c", "crankshaft.expansion", "12e-6 1/K"],
  temperature: ["T_c", "conditions.crankshaftTemperature", "110 degC"],
  expect: "0.050 mm",
});
