import { crownVolumeChangeForStroke as changeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownVolumeChangeForStroke = quantity({
  id: "crownVolumeChangeForStroke",
  name: "Change of crown volume for the stroke",
  symbol: "Delta_Vp",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "How much more dish (positive), or less dome, the piston needs so that the longer stroke keeps the target ratio with the same deck clearance, head and gasket.",
  inputs: { B: "block.bore", Delta_S: "strokeGain", epsilon_t: "targets.compressionRatio" },
  formula: "pi / 4 * B^2 * Delta_S / (epsilon_t - 1)",
  compute: ({ B, Delta_S, epsilon_t }) =>
    changeOf({ bore: B, strokeChange: Delta_S, compressionRatio: epsilon_t }),
  shape: "monotone",
  valid: "same bore, deck clearance, head and gasket; target ratio above 1",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { B: "86.5 mm", Delta_S: "6 mm", epsilon_t: "9.4" }, expect: "4.20 cm3" }],
});
