import { test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { smallEndSideRoom, smallEndToCrown } from "./smallEnd.ts";

const side = { bossDistance: 24 * mm, smallEndWidth: 22 * mm, planeOffset: 0, axialFloat: 0 };

test("examples; an offset either way takes room", () => {
  near(smallEndToCrown({ crownUndersideHeight: 19.6 * mm, smallEndRadius: 16.5 * mm }) / mm, 3.1, 1e-9);
  near(smallEndSideRoom(side) / mm, 1, 1e-9);
  near(smallEndSideRoom({ ...side, planeOffset: -0.3 * mm, axialFloat: 0.2 * mm }) / mm, 0.5, 1e-9);
});

test("boundary", () => {
  refuses(() => smallEndSideRoom({ ...side, axialFloat: -0.1 * mm }), "axialFloat");
  refusesNonFinite(smallEndToCrown, { crownUndersideHeight: 19.6 * mm, smallEndRadius: 16.5 * mm });
  refusesNonFinite(smallEndSideRoom, side);
});
