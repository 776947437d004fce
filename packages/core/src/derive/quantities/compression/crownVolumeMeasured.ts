import { crownVolumeFromFill } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownVolumeMeasured = quantity({
  id: "crownVolumeMeasured",
  name: "Crown volume by the fill test",
  symbol: "V_pm",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "Net volume of the crown from a fill test: the piston lowered, the gap above the top ring sealed with grease, a plate on the deck. Positive for a dish, negative for a dome, valve pockets included.",
  inputs: { V_f: "piston.fillVolume", B: "block.bore", x_f: "piston.fillDepth" },
  formula: "V_f - pi / 4 * B^2 * x_f",
  compute: ({ V_f, B, x_f }) =>
    crownVolumeFromFill({ fillVolume: V_f, bore: B, depthBelowDeck: x_f, topLandVolume: 0 }),
  shape: "monotone",
  valid:
    "the top land sealed with grease; the depth measured at the crown’s flat over the pin, where the piston does not rock",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { V_f: "75.6 cm3", B: "86.5 mm", x_f: "10 mm" }, expect: "16.83 cm3" }],
  display: true,
});
