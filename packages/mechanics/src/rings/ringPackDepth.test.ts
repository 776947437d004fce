import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { leastCompressionHeight, pinBoreToOilGroove, ringPackDepth } from "./ringPackDepth.ts";

const pack = { ringPackDepth: 19.09 * mm, pinDiameter: 22 * mm };

test("examples", () => {
  near(ringPackDepth([7 * mm, 1.23 * mm, 4 * mm]) / mm, 12.23, 1e-9);
  near(pinBoreToOilGroove({ ...pack, compressionHeight: 28.4 * mm }) / mm, -1.69, 1e-9);
  near(leastCompressionHeight({ ...pack, leastWall: 1 * mm }) / mm, 31.09, 1e-9);
});

test("boundary", () => {
  refuses(() => ringPackDepth([]), "heights");
  refuses(() => ringPackDepth([7 * mm, 0]), "heights[1]");
  refuses(() => leastCompressionHeight({ ...pack, leastWall: -1 * mm }), "leastWall");
  refusesNonFinite(pinBoreToOilGroove, { ...pack, compressionHeight: 28.4 * mm });
  refusesNonFinite(leastCompressionHeight, { ...pack, leastWall: 1 * mm });
});

property.prop([between(0, 0.01)])("the least height leaves the wall asked for", (leastWall) => {
  const compressionHeight = leastCompressionHeight({ ...pack, leastWall });
  near(pinBoreToOilGroove({ ...pack, compressionHeight }), leastWall, 1e-15);
});
