import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, deg, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { openValveToPiston, shutValveDistance } from "./shutValveDistance.ts";

const stack = {
  deckClearance: 0.1 * mm,
  gasketThickness: 1 * mm,
  valveRecess: 1.6 * mm,
  valveTilt: 12 * deg,
  pocketDepth: 2.2 * mm,
};

test("examples", () => {
  near(shutValveDistance(stack) / mm, 4.841, 5e-4);
  near(openValveToPiston({ shutValveDistance: 4.8 * mm, greatestLift: 11 * mm }) / mm, -6.2, 1e-12);
});

property.prop([between(0, 3e-3), between(-1, 1)])("milling the deck takes its cosine", (cut, valveTilt) => {
  const deckClearance = stack.deckClearance - cut;
  const loss =
    shutValveDistance({ ...stack, valveTilt }) - shutValveDistance({ ...stack, valveTilt, deckClearance });
  near(loss, cut * Math.cos(valveTilt), 1e-15);
  expect(loss).toBeLessThanOrEqual(cut + 1e-15);
});

property.prop([between(0, 0.02)])("the drop falls with the lift one to one", (greatestLift) => {
  nearly(openValveToPiston({ shutValveDistance: 1, greatestLift }) + greatestLift, 1, 1e-15);
});

test("boundary", () => {
  refuses(() => shutValveDistance({ ...stack, gasketThickness: -1e-9 }), "gasketThickness");
  refuses(() => shutValveDistance({ ...stack, pocketDepth: -1e-9 }), "pocketDepth");
  refuses(() => shutValveDistance({ ...stack, valveTilt: 90 * deg }), "valveTilt");
  refuses(() => openValveToPiston({ shutValveDistance: 1, greatestLift: -1e-9 }), "greatestLift");
  refusesNonFinite(shutValveDistance, stack);
  refusesNonFinite(openValveToPiston, { shutValveDistance: 1, greatestLift: 1 });
});
