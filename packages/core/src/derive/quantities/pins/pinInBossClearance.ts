import { quantity } from "../../Quantity.ts";

export const pinInBossClearance = quantity({
  id: "pinInBossClearance",
  name: "Pin clearance in the bosses",
  symbol: "C_pb",
  unit: "um",
  decimals: 1,
  system: "pins",
  meaning:
    "Bore of the bosses less pin diameter, cold; across the diameter. It opens up as the aluminium warms.",
  inputs: { d_b: "piston.pinBore", d_p: "pistonPin.outerDiameter" },
  formula: "d_b - d_p",
  compute: ({ d_b, d_p }) => d_b - d_p,
  shape: "monotone",
  hot: { quantity: "pinInBossClearanceHot" },
  valid: "both at 20 °C",
  sources: [{ id: "definition" }],
  examples: [{ given: { d_b: "22.018 mm", d_p: "22 mm" }, expect: "18.0 um" }],
});
