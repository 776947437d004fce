import type { Random } from "../seeded.ts";

/**
 * Answers yes with the probability e^(−x), x from 0 to 1, by comparing random numbers alone: the length of a falling
 * run that begins below x is even or odd with just these chances.
 *
 * Source: J. von Neumann’s comparison method, in G. E. Forsythe, “Von Neumann’s Comparison Method for Random Sampling
 * from the Normal and Other Distributions”, STAN-CS-72-254, Stanford University, 1972.
 */
export function chanceOfExp(x: number, random: Random): boolean {
  let last = x;
  let falls = 0;
  for (let next = random(); next < last; next = random()) {
    last = next;
    falls += 1;
  }
  return falls % 2 === 0;
}

/**
 * A number of the normal distribution with mean 0 and standard deviation 1, cut off at ± `most`. A number is taken
 * evenly from the whole range and kept with the probability e^(−z²/2); only sums, products and comparisons are used,
 * which every machine rounds alike, where logarithms and sines may differ in their last digit.
 * @param most greatest distance from the mean, above 0, in standard deviations
 */
export function drawNormal(most: number, random: Random): number {
  for (;;) {
    const z = most * (2 * random() - 1);
    const exponent = (z * z) / 2;
    const parts = Math.max(1, Math.ceil(exponent));
    let kept = true;
    for (let part = 0; kept && part < parts; part += 1) kept = chanceOfExp(exponent / parts, random);
    if (kept) return z;
  }
}
