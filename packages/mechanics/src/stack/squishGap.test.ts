import { expect, test } from "vitest";
import { mm, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { runningSquishGap, squishGap } from "./squishGap.ts";

const running = {
  squishGap: 1.101 * mm,
  stackGrowth: -0.147 * mm,
  rodStretch: 0.067 * mm,
  pistonRock: 0,
  rodBearingClearance: 0.056 * mm,
  mainBearingClearance: 0.064 * mm,
  crankDeflection: 0,
};

test("examples", () => {
  near(squishGap({ deckClearance: 0.10065 * mm, gasketThickness: 1 * mm }) / mm, 1.1006, 1e-4);
  near(runningSquishGap(running) / mm, 0.827, 5e-4);
});

test("boundary; every loss narrows the gap", () => {
  refuses(() => squishGap({ deckClearance: 0, gasketThickness: 0 }), "gasketThickness");
  refuses(() => runningSquishGap({ ...running, rodStretch: -1 * mm }), "rodStretch");
  refusesNonFinite(squishGap, { deckClearance: 0, gasketThickness: 1 * mm });
  refusesNonFinite(runningSquishGap, running);
  const losses = [
    "rodStretch",
    "pistonRock",
    "rodBearingClearance",
    "mainBearingClearance",
    "crankDeflection",
  ] as const;
  for (const loss of losses) {
    expect(runningSquishGap({ ...running, [loss]: running[loss] + 0.1 * mm })).toBeLessThan(
      runningSquishGap(running),
    );
  }
});
