import { expect, test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { pinWallRatio } from "./pinWallRatio.ts";

test("example and boundary", () => {
  near(pinWallRatio({ pinDiameter: 22 * mm, pinBore: 12.7 * mm }), 0.5773, 5e-5);
  expect(pinWallRatio({ pinDiameter: 22 * mm, pinBore: 0 })).toBe(0);
  refuses(() => pinWallRatio({ pinDiameter: 22 * mm, pinBore: 22 * mm }), "pinBore");
  refusesNonFinite(pinWallRatio, { pinDiameter: 22 * mm, pinBore: 12.7 * mm });
});
