import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { damperTuning } from "./damperTuning.ts";

test("example and boundary", () => {
  const input = { ringInertia: 0.003, modalInertia: 0.02, angularFrequency: 2400 };
  const found = damperTuning(input);
  near(found.inertiaRatio, 0.15, 1e-15);
  near(found.frequencyRatio, 0.8696, 0.00005);
  near(found.dampingRatio, 0.1923, 0.00005);
  refuses(() => damperTuning({ ...input, ringInertia: 0 }), "ringInertia");
  refusesNonFinite(damperTuning, input);
});

/** Twist of the mode over its twist under the same torque at rest, unit modal inertia and frequency. */
function magnification(ring: number, stiffness: number, damping: number, frequency: number): number {
  // (k + i w c) joins ring and mode; the mode's own spring is 1.
  const w2 = frequency ** 2;
  const c = damping * frequency;
  const own = stiffness - ring * w2;
  const real = (1 - w2) * own - ring * w2 * stiffness;
  const imaginary = c * (1 - w2 - ring * w2);
  return Math.hypot(own, c) / Math.hypot(real, imaginary);
}

const ratios = between(0.02, 0.5);

property.prop([ratios])("the two fixed points are level at sqrt(1 + 2/m)", (m) => {
  const { stiffness } = damperTuning({ ringInertia: m, modalInertia: 1, angularFrequency: 1 });
  // The fixed points of the tuned damper: w^2 = (1 -+ sqrt(m / (2 + m))) / (1 + m).
  for (const sign of [-1, 1]) {
    const at = Math.sqrt((1 + sign * Math.sqrt(m / (2 + m))) / (1 + m));
    for (const damping of [0.01, 0.1, 1].map((share) => share * m)) {
      near(magnification(m, stiffness, damping, at) / Math.sqrt(1 + 2 / m), 1, 1e-9);
    }
  }
});

property.prop([ratios])("the damping is near the best: the peak is hardly above the fixed points", (m) => {
  const { stiffness, damping } = damperTuning({ ringInertia: m, modalInertia: 1, angularFrequency: 1 });
  const peak = (factor: number) => {
    let highest = 0;
    for (let frequency = 0.3; frequency < 2; frequency += 0.001) {
      highest = Math.max(highest, magnification(m, stiffness, factor * damping, frequency));
    }
    return highest;
  };
  expect(peak(1)).toBeLessThan(1.01 * Math.sqrt(1 + 2 / m));
  expect(peak(1)).toBeLessThan(peak(0.8));
  expect(peak(1)).toBeLessThan(peak(1.25));
});
