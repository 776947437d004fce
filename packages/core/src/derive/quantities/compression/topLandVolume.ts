import { topLandVolume as volumeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topLandVolume = quantity({
  id: "topLandVolume",
  name: "Top land volume",
  symbol: "V_tl",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "Volume of the narrow gap round the piston above the top ring. It belongs to the clearance volume; charge that burns late or not at all sits there.",
  inputs: { B: "block.bore", D_tl: "piston.topLandDiameter", h_1: "piston.topLandHeight" },
  formula: "pi / 4 * (B^2 - D_tl^2) * h_1",
  compute: ({ B, D_tl, h_1 }) => volumeOf({ bore: B, topLandDiameter: D_tl, topLandHeight: h_1 }),
  shape: "monotone",
  valid: "cold; it shrinks as the piston warms up",
  sources: [{ id: "heywood", where: "crevices" }],
  examples: [{ given: { B: "86.5 mm", D_tl: "85.85 mm", h_1: "7 mm" }, expect: "0.62 cm3" }],
});
