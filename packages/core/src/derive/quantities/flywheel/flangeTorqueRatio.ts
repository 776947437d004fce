import { quantity } from "../../Quantity.ts";

export const flangeTorqueRatio = quantity({
  id: "flangeTorqueRatio",
  name: "Flywheel joint over greatest torque",
  symbol: "k_fl",
  unit: "1",
  decimals: 2,
  system: "flywheel",
  meaning:
    "Torque that the flywheel joint holds by friction over the greatest torque of the engine. Torque comes in pulses, so it must hold several times the mean.",
  inputs: { T_fl: "flangeTorque", T_max: "greatestTorque" },
  formula: "T_fl / T_max",
  compute: ({ T_fl, T_max }) => T_fl / T_max,
  shape: "monotone",
  valid: "friction alone, dowels not counted",
  sources: [{ id: "definition" }],
  examples: [{ given: { T_fl: "2376 N m", T_max: "641 N m" }, expect: "3.71" }],
});
