import { thermalGrowth } from "../../thermalGrowth.ts";

export const pistonGrowth = thermalGrowth({
  id: "pistonGrowth",
  name: "Growth of the compression height",
  symbol: "Delta_hp",
  meaning:
    "How much the crown moves away from the pin when the piston warms up. It closes the gap between piston and head.",
  size: ["h_c", "piston.compressionHeight", "33 mm"],
  expansion: ["alpha_p", "piston.expansion", "22.3e-6 1/K"],
  temperature: ["T_p", "conditions.pistonTemperature", "142 degC"],
  expect: "0.090 mm",
});
