import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { falls, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { angles, between, mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { counterweightToCase } from "./counterweightToCase.ts";
import { counterweightToSquirter } from "./counterweightToSquirter.ts";

const input = {
  across: 50 * mm,
  height: 67 * mm,
  nozzleRadius: 3 * mm,
  counterweightRadius: 74 * mm,
  mainBearingClearance: 0.06 * mm,
};

test("example and boundary", () => {
  near(counterweightToSquirter(input) / mm, 6.5702, 1e-4);
  refuses(() => counterweightToSquirter({ ...input, nozzleRadius: 0 }), "nozzleRadius");
  refuses(
    () => counterweightToSquirter({ ...input, mainBearingClearance: -0.01 * mm }),
    "mainBearingClearance",
  );
  refusesNonFinite(counterweightToSquirter, input);
});

property.prop([between(70 * mm, 120 * mm), angles, between(1 * mm, 8 * mm)])(
  "wherever the nozzle stands about the crankshaft, it is a case that reaches in to it",
  (distance, angle, nozzleRadius) => {
    const place = { across: distance * Math.sin(angle), height: distance * Math.cos(angle) };
    const { counterweightRadius, mainBearingClearance } = input;
    const inCase = { caseRadius: distance - nozzleRadius, counterweightRadius, mainBearingClearance };
    near(counterweightToSquirter({ ...input, ...place, nozzleRadius }), counterweightToCase(inCase), 1e-15);
  },
);

solvesBack(counterweightToSquirter, {
  across: rises(10 * mm, 80 * mm),
  height: rises(30 * mm, 90 * mm),
  nozzleRadius: falls(1 * mm, 8 * mm),
  counterweightRadius: falls(50 * mm, 90 * mm),
  mainBearingClearance: falls(0, 0.1 * mm),
});
