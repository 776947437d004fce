import { quantity } from "../../Quantity.ts";

export const squishAreaShare = quantity({
  id: "squishAreaShare",
  name: "Squish area as a share of the bore",
  symbol: "a_s",
  unit: "%",
  decimals: 1,
  system: "compression",
  meaning:
    "Part of the bore over which the flat of the head stands close over the piston: bore area less the opening of the chamber. It stirs the charge and shortens the way of the flame.",
  inputs: { A_ch: "cylinderHead.chamberArea", A: "boreArea" },
  formula: "1 - A_ch / A",
  compute: ({ A_ch, A }) => 1 - A_ch / A,
  shape: "monotone",
  valid: "a chamber whose opening lies within the bore",
  sources: [{ id: "definition" }],
  examples: [{ given: { A_ch: "47 cm2", A: "58.77 cm2" }, expect: "20.0 %" }],
  display: true,
});
