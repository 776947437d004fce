import { deckVolume as volumeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const deckVolume = quantity({
  id: "deckVolume",
  name: "Deck volume",
  symbol: "V_k",
  unit: "cm3",
  decimals: 2,
  system: "compression",
  meaning:
    "Volume between the crown’s flat at top dead centre and the deck; negative when the crown stands above the deck.",
  inputs: { B: "block.bore", h_d: "deckClearance" },
  formula: "pi / 4 * B^2 * h_d",
  compute: ({ B, h_d }) => volumeOf({ bore: B, deckClearance: h_d }),
  shape: "guarded",
  valid: "round bores",
  sources: [{ id: "definition" }],
  examples: [{ given: { B: "86.5 mm", h_d: "0.10065 mm" }, expect: "0.59 cm3" }],
});
