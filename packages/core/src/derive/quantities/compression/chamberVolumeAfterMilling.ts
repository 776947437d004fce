import { chamberVolumeChangeByMilling } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const chamberVolumeAfterMilling = quantity({
  id: "chamberVolumeAfterMilling",
  name: "Chamber volume after milling",
  symbol: "V_chm",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "What the chamber will hold once the head face is milled by what is still to come off. It goes in as the chamber volume when the head comes back, and is measured again.",
  inputs: {
    V_ch: "cylinderHead.chamberVolume",
    A_ch: "cylinderHead.chamberArea",
    m_pl: "cylinderHead.plannedMilling",
  },
  formula: "V_ch - A_ch * m_pl",
  compute: ({ V_ch, A_ch, m_pl }) =>
    V_ch + chamberVolumeChangeByMilling({ faceArea: A_ch, milledDepth: m_pl }),
  shape: "monotone",
  valid: "chamber walls square to the face over the depth",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { V_ch: "42 cm3", A_ch: "47 cm2", m_pl: "0.4 mm" }, expect: "40.12 cm3" }],
  display: true,
});
