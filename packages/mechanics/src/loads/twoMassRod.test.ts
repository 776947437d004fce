import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { twoMassRod } from "./twoMassRod.ts";

const input = { mass: 0.575, rodLength: 144.5 * mm, centreOfGravityFromBigEnd: 42.7 * mm };

test("example and boundary", () => {
  near(twoMassRod(input).rotating * 1e3, 405.1, 0.05);
  near(twoMassRod(input).reciprocating * 1e3, 169.9, 0.05);
  refuses(() => twoMassRod({ ...input, centreOfGravityFromBigEnd: 144.5 * mm }), "centreOfGravityFromBigEnd");
  refusesNonFinite(twoMassRod, input);
});

property.prop([between(0.01, 0.99)])("mass and centre of gravity are kept", (part) => {
  const split = twoMassRod({ ...input, centreOfGravityFromBigEnd: part * input.rodLength });
  nearly(split.rotating + split.reciprocating, input.mass);
  nearly(split.reciprocating * input.rodLength, input.mass * part * input.rodLength);
});
