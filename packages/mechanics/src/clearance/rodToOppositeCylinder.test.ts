import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, refuses, um } from "../check/support.test-support.ts";
import { eightCrank, eightPoints, outlineOf, sampledLeast } from "./rodSweep.test-support.ts";
import { rodToOppositeCylinder } from "./rodToOppositeCylinder.ts";

const eight = {
  crank: { ...eightCrank, pinLineOffset: 0.7 * mm },
  outline: outlineOf(eightPoints),
  bore: 104 * mm,
  cylinderAxisOffset: 0.3 * mm,
  cylinderBottomHeight: 87.9 * mm,
  bigEndWidth: 23.85 * mm,
  planeOffset: 0.4 * mm,
  bankAngle: 90 * deg,
  bankStagger: 24 * mm,
};

/** The other bank's metal in space, slice by slice of the rod: the definition, block frame. */
function sampledInSpace(one: typeof eight): number {
  const { bore, cylinderAxisOffset, cylinderBottomHeight, bankAngle, bankStagger } = one;
  const face = bankStagger + one.planeOffset + one.bigEndWidth / 2;
  const slices = [face - one.bigEndWidth, face - one.bigEndWidth / 2, face];
  const banks = [1, -1].map((side) => {
    // This rod's cylinder leans by half the bank angle to one side, the other one to the other side.
    const [s, c] = [Math.sin((side * bankAngle) / 2), Math.cos(bankAngle / 2)];
    return sampledLeast(eightPoints, one.crank, (x, y) => {
      const [X, Y] = [x * c + y * s, y * c - x * s];
      const across = X * c + Y * s - cylinderAxisOffset;
      const along = Y * c - X * s;
      const beyond = side * X;
      return Math.min(
        ...slices.map((z) => {
          const [wall, below] = [bore / 2 - Math.hypot(across, z), cylinderBottomHeight - along];
          const corner = wall > 0 && below > 0 ? Math.hypot(wall, below) : Math.max(wall, below);
          return Math.max(corner, beyond);
        }),
      );
    });
  });
  return Math.min(...banks);
}

test("agrees with plain sampling in space", () => {
  near(rodToOppositeCylinder(eight).clearance, sampledInSpace(eight), 2 * um);
  const narrow = { ...eight, bankAngle: 60 * deg, cylinderBottomHeight: 100 * mm };
  near(rodToOppositeCylinder(narrow).clearance, sampledInSpace(narrow), 2 * um);
});

test("the rod's own bore is no metal of the other bank in a narrow V", () => {
  // The beam runs up its own bore far beyond the height of the other cylinder's bottom.
  const narrow = { ...eight, bankAngle: 30 * deg, cylinderBottomHeight: 100 * mm };
  expect(rodToOppositeCylinder(narrow).clearance).toBeGreaterThan(0);
});

property.prop([between(0, 30), between(0, 8), between(0, 10)], { numRuns: 15 })(
  "a wider stagger never raises it, a higher bottom never lowers it",
  (stagger, wider, higher) => {
    const at = (bankStagger: number, up: number) =>
      rodToOppositeCylinder({
        ...eight,
        bankStagger: bankStagger * mm,
        cylinderBottomHeight: eight.cylinderBottomHeight + up * mm,
      }).clearance;
    expect(at(stagger + wider, 0)).toBeLessThanOrEqual(at(stagger, 0) + 1e-8);
    expect(at(stagger, higher)).toBeGreaterThanOrEqual(at(stagger, 0) - 1e-8);
  },
);

test("mirrored, it is the same", () => {
  const crank = { ...eight.crank, pinLineOffset: -0.7 * mm };
  const mirrored = { ...eight, crank, cylinderAxisOffset: -0.3 * mm };
  near(rodToOppositeCylinder(mirrored).clearance, rodToOppositeCylinder(eight).clearance, 1e-8);
});

test("boundary", () => {
  refuses(() => rodToOppositeCylinder({ ...eight, bankAngle: 0 }), "bankAngle");
  refuses(() => rodToOppositeCylinder({ ...eight, bankStagger: -1 }), "bankStagger");
  refuses(() => rodToOppositeCylinder({ ...eight, bankStagger: 60 * mm }), "bigEndWidth");
});
