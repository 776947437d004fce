import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { solveIncreasing } from "./solveIncreasing.ts";
import { between, near } from "./support.test-support.ts";

property.prop([between(-5, 50)])("finds the root, however far above the first bracket", (root) => {
  near(
    solveIncreasing((x) => Math.exp(x) - Math.exp(root), -6, -5, 1e-10),
    root,
    1e-9,
  );
  near(
    solveIncreasing((x) => x - root, -6, -5.5, 1e-10),
    root,
    1e-9,
  );
  near(
    solveIncreasing((x) => Math.cbrt(x - root), -6, -5.5, 1e-10),
    root,
    1e-8,
  );
});

test("says when there is none", () => {
  expect(() => solveIncreasing(() => -1, 0, 1, 1e-9)).toThrow(RangeError);
});
