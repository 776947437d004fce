import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import {
  between,
  cranks,
  mm,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { compressionHeightNeeded, deckClearance } from "./deckClearance.ts";

const input = { crank: offsetCrank, deckHeight: 220 * mm, compressionHeight: 28.4 * mm };

test("examples and boundary", () => {
  near(deckClearance(input) / mm, 0.1007, 5e-5);
  const wanted = { crank: offsetCrank, deckHeight: 220 * mm, deckClearance: 0.1 * mm };
  near(compressionHeightNeeded(wanted) / mm, 28.4007, 5e-5);
  refuses(() => deckClearance({ ...input, compressionHeight: 0 }), "compressionHeight");
  refusesNonFinite(deckClearance, input);
  refusesNonFinite(compressionHeightNeeded, wanted);
});

property.prop([cranks, between(-0.002, 0.002)])(
  "the height needed gives the clearance wanted",
  (crank, wanted) => {
    const deckHeight = crank.rodLength + crank.throwRadius + 0.03;
    const compressionHeight = compressionHeightNeeded({ crank, deckHeight, deckClearance: wanted });
    near(deckClearance({ crank, deckHeight, compressionHeight }), wanted, 1e-15);
  },
);
