import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { angles, between, nearly, rpm, um } from "../check/support.test-support.ts";
import { isClosed, mobilityScale } from "./filmCycle.ts";

const bearing = {
  viscosity: 8.25e-3,
  angularSpeed: 7800 * rpm,
  journalDiameter: 0.048,
  length: 0.0176,
  radialClearance: 32 * um,
};

property.prop([between(0.3, 3)], { numRuns: 50 })(
  "a journal moves by the square of its room, and slower in thick oil and in a large bearing",
  (factor) => {
    const scale = mobilityScale(bearing);
    const by = (name: keyof typeof bearing) =>
      mobilityScale({ ...bearing, [name]: factor * bearing[name] }) / scale;
    nearly(by("radialClearance"), factor ** 2);
    nearly(by("viscosity"), 1 / factor);
    nearly(by("length"), 1 / factor);
    nearly(by("angularSpeed"), 1 / factor);
    nearly(by("journalDiameter"), factor ** -3);
  },
);

property.prop([angles], { numRuns: 100 })(
  "a path is closed when it comes back, whichever way it missed",
  (angle) => {
    const closed = (miss: number) => isClosed(miss * Math.cos(angle), miss * Math.sin(angle), 1);
    expect([1e-3, 1e-2].map(closed)).toEqual([true, false]);
  },
);

test("a path that never closes is left after some cycles", () => {
  expect([1, 5, 6].map((cycles) => isClosed(1, 1, cycles))).toEqual([false, false, true]);
});
