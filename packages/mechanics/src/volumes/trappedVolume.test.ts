import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  cm3,
  cranks,
  deg,
  mm,
  near,
  offsetCrank,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { trappedCompressionRatio, trappedVolume } from "./trappedVolume.ts";

const input = { crank: offsetCrank, bore: 86.5 * mm, clearanceVolume: 69.0206 * cm3, inletClosing: 68 * deg };

test("examples and boundary", () => {
  near(trappedVolume(input) / cm3, 487.291, 5e-4);
  near(trappedCompressionRatio(input), 7.0601, 5e-5);
  refuses(() => trappedVolume({ ...input, inletClosing: Math.PI }), "inletClosing");
  refuses(() => trappedVolume({ ...input, inletClosing: -0.01 }), "inletClosing");
  refusesNonFinite(trappedVolume, input);
  refusesNonFinite(trappedCompressionRatio, input);
});

property.prop([cranks, between(0.3, 2)])("closing later traps less", (crank, inletClosing) => {
  const later = { ...input, crank, inletClosing: inletClosing + 0.1 };
  expect(trappedCompressionRatio(later)).toBeLessThan(
    trappedCompressionRatio({ ...input, crank, inletClosing }),
  );
});
