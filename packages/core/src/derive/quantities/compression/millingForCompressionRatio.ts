import { millingForRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const millingForCompressionRatio = quantity({
  id: "millingForCompressionRatio",
  name: "Milling that gives the target ratio",
  symbol: "m_h",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "Depth to take off the head face for the target compression ratio; negative when the chamber is too small already. Every 0.1 mm takes as many cubic centimetres as a hundredth of the chamber’s area in square centimetres.",
  inputs: {
    V_d: "sweptVolume",
    V_c: "clearanceVolume",
    epsilon_t: "targets.compressionRatio",
    A_ch: "cylinderHead.chamberArea",
  },
  formula: "(V_c - V_d / (epsilon_t - 1)) / A_ch",
  compute: ({ V_d, V_c, epsilon_t, A_ch }) =>
    millingForRatio({ sweptVolume: V_d, clearanceVolume: V_c, compressionRatio: epsilon_t, faceArea: A_ch }),
  shape: "guarded",
  valid:
    "chamber walls square to the face over the depth; check what the head has left, the valve clearance and the cam drive",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { V_d: "552.399 cm3", V_c: "69.0206 cm3", epsilon_t: "9.4", A_ch: "47 cm2" },
      expect: "0.693 mm",
    },
  ],
  display: true,
});
