import { test } from "vitest";
import { cm3, mm, near, nearly, refusesNonFinite } from "../check/support.test-support.ts";
import { deckVolume } from "./deckVolume.ts";

test("example; a crown above the deck takes volume away", () => {
  const input = { bore: 86.5 * mm, deckClearance: 0.10065 * mm };
  near(deckVolume(input) / cm3, 0.59147, 5e-6);
  nearly(deckVolume({ ...input, deckClearance: -input.deckClearance }), -deckVolume(input));
  refusesNonFinite(deckVolume, input);
});
