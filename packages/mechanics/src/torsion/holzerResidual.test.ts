import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { holzerResidual } from "./holzerResidual.ts";

const chain = { inertias: [0.1, 0.3], stiffnesses: [2e5] };

test("nothing is left at the natural frequency of two discs, and at rest", () => {
  const natural = Math.sqrt(2e5 * (1 / 0.1 + 1 / 0.3));
  const found = holzerResidual({ chain, angularFrequency: natural });
  near(found.torque / (0.1 * natural ** 2), 0, 1e-14);
  near(found.twists[1]!, -1 / 3, 1e-14);
  expect(holzerResidual({ chain, angularFrequency: 0 })).toEqual({ torque: 0, twists: [1, 1] });
});

/**
 * Holzer's table of four discs at 20 rad/s, reckoned by hand line by line; invented numbers, no published table.
 * Columns: inertia, inertia × 400, twist, its torque, sum of torques, stiffness behind it, twist lost over that.
 */
const byHand = [
  [2, 800, 1, 800, 800, 1000, 0.8],
  [1, 400, 0.2, 80, 880, 2000, 0.44],
  [3, 1200, -0.24, -288, 592, 1500, 592 / 1500],
  [4, 1600, -0.24 - 592 / 1500, -1015.4666666666667, -423.4666666666667, undefined, undefined],
] as const;

test("a table of four discs agrees with the one made by hand, line by line", () => {
  const inertias = byHand.map(([inertia]) => inertia);
  const stiffnesses = byHand.flatMap(([, , , , , stiffness]) => stiffness ?? []);
  byHand.forEach(([, , twist, , sum], line) => {
    // The table broken off after a line is that of the shorter chain.
    const shorter = { inertias: inertias.slice(0, line + 1), stiffnesses: stiffnesses.slice(0, line) };
    if (line === 0) return;
    const { torque, twists } = holzerResidual({ chain: shorter, angularFrequency: 20 });
    near(torque, sum, 1e-9);
    near(twists[line]!, twist, 1e-12);
  });
});

test("boundary", () => {
  refuses(() => holzerResidual({ chain, angularFrequency: -1 }), "angularFrequency");
  refusesNonFinite(holzerResidual, { chain, angularFrequency: 100 });
});

property.prop([between(1, 4000)])("two discs follow the closed form", (angularFrequency) => {
  const [a, b] = chain.inertias as [number, number];
  const square = angularFrequency ** 2;
  const closed = square * (a + b - (square * a * b) / chain.stiffnesses[0]!);
  const { torque } = holzerResidual({ chain, angularFrequency });
  near(torque, closed, 1e-13 * square * (a + b + (square * a * b) / chain.stiffnesses[0]!));
});

property.prop([between(1e-3, 0.1)])("slowly driven the chain turns as one", (angularFrequency) => {
  nearly(holzerResidual({ chain, angularFrequency }).torque, 0.4 * angularFrequency ** 2, 1e-8);
});
