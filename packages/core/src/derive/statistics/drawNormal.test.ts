import { describe, expect, it } from "vitest";
import { seeded } from "../seeded.ts";
import { chanceOfExp, drawNormal } from "./drawNormal.ts";

const COUNT = 40_000;

/** Standard deviation of a normal distribution cut off at ± c: 1 − 2cφ(c)/(2Φ(c) − 1), φ and Φ by integration. */
function cutDeviation(most: number): number {
  const steps = 20_000;
  const density = (z: number) => Math.exp((-z * z) / 2);
  let [weight, square] = [0, 0];
  for (let step = 0; step < steps; step += 1) {
    const z = -most + ((step + 0.5) / steps) * 2 * most;
    weight += density(z);
    square += z * z * density(z);
  }
  return Math.sqrt(square / weight);
}

describe("drawing by comparisons", () => {
  it.each([0, 0.1, 0.5, 1])("says yes with the probability of e to minus %s", (x) => {
    const random = seeded(3, `chance ${x}`, 0);
    const yes = Array.from({ length: COUNT }, () => chanceOfExp(x, random)).filter(Boolean).length / COUNT;
    const expected = Math.exp(-x);
    expect(Math.abs(yes - expected)).toBeLessThanOrEqual(
      4 * Math.sqrt((expected * (1 - expected)) / COUNT) + 1e-12,
    );
  });
  it.each([2, 3])("gives the normal distribution cut off at %s standard deviations", (most) => {
    const random = seeded(5, `normal ${most}`, 0);
    const drawn = Array.from({ length: COUNT }, () => drawNormal(most, random));
    const mean = drawn.reduce((total, one) => total + one, 0) / COUNT;
    const deviation = Math.sqrt(drawn.reduce((total, one) => total + (one - mean) ** 2, 0) / COUNT);
    expect(Math.max(...drawn.map(Math.abs))).toBeLessThanOrEqual(most);
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(COUNT));
    expect(Math.abs(deviation / cutDeviation(most) - 1)).toBeLessThan(4 / Math.sqrt(2 * COUNT));
    // 68.27 of 100 within one standard deviation, of those that are not cut off.
    const within = drawn.filter((z) => Math.abs(z) < 1).length / COUNT;
    expect(Math.abs(within - 0.6827 / (most === 3 ? 0.9973 : 0.9545))).toBeLessThan(0.01);
  });
});
