import { expect, test } from "vitest";
import { bar, deg, near, nearly } from "../check/support.test-support.ts";
import { demoCycle } from "./cycle.test-support.ts";
import { pressureTraceForHeat } from "./pressureTrace.ts";
import { tracePeak } from "./tracePeak.ts";

test("a parabola's top is found between the samples, on either side of top dead centre", () => {
  const closed = pressureTraceForHeat(demoCycle, 5000).closed;
  for (const top of [12.3, -7.8, 0.4, -0.4]) {
    const pressures = Float64Array.from({ length: 720 }, (_, k) => {
      const place = k > 360 ? k - 720 : k;
      return 100 * bar - (place - top) ** 2;
    });
    const peak = tracePeak({ step: deg, pressures, closed, heat: 1 });
    near(peak.angle / deg, top, 1e-6);
    nearly(peak.pressure, 100 * bar, 1e-12);
  }
});

test("agrees with a finer trace, whose greatest sample it lies close to", () => {
  const coarse = tracePeak(pressureTraceForHeat(demoCycle, 5600));
  const fine = pressureTraceForHeat({ ...demoCycle, step: deg / 16 }, 5600);
  nearly(coarse.pressure, Math.max(...fine.pressures), 3e-4);
  near(coarse.angle, tracePeak(fine).angle, 0.1 * deg);
  expect(coarse.angle).toBeGreaterThan(5 * deg);
});
