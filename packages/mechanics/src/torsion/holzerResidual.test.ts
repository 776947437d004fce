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
