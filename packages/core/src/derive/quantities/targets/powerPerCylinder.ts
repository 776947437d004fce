import { quantity } from "../../Quantity.ts";

export const powerPerCylinder = quantity({
  id: "powerPerCylinder",
  name: "Power of one cylinder",
  symbol: "P_z",
  unit: "kW",
  decimals: 1,
  system: "targets",
  meaning: "Power at the crankshaft shared out over the cylinders. Makers rate rods and pistons by it.",
  inputs: { P_c: "crankPower", z: "block.cylinders" },
  formula: "P_c / z",
  compute: ({ P_c, z }) => P_c / z,
  shape: "monotone",
  valid: "all cylinders working alike",
  sources: [{ id: "definition" }],
  examples: [{ given: { P_c: "440 kW", z: "4" }, expect: "110.0 kW" }],
});
