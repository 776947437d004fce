import { type Build, fields, Nominals, quantities, withField } from "trialfit";
import { readAims } from "../../packages/core/src/choose/solve/readAims.ts";
import { stepsInside } from "../../packages/core/src/choose/solve/steps.ts";
import { Trial } from "../../packages/core/src/choose/solve/Trial.ts";
import type { Aim, Wanted } from "../../packages/core/src/choose/solve/Wanted.ts";
import { writeSize } from "../../packages/core/src/choose/solve/writeSize.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";

/** How far an aim is off, said anew: 0 where it is met exactly, at most its allowance where it is met [SI]. */
export function offBy({ kind, value }: Pick<Aim, "kind" | "value">, reached: number | undefined): number {
  if (reached === undefined || Number.isNaN(reached)) return Number.POSITIVE_INFINITY;
  if (kind === "least") return Math.max(0, value - reached);
  return kind === "most" ? Math.max(0, reached - value) : Math.abs(reached - value);
}

/** What is wanted of a build, and what it comes to at sizes that are tried. */
export class Wish {
  readonly wanted: readonly Wanted[];
  readonly aims: readonly Aim[];
  private readonly trial: Trial;
  private readonly build: Build;

  constructor(build: Build) {
    this.build = build;
    this.wanted = [...build.wanted].map(([path, one]) => ({ path, ...one }));
    this.aims = readAims(build, quantities);
    this.trial = Trial.of(withDefaults(build), quantities, this.wanted, this.aims);
  }

  /** What each aim comes to, by the chain that computes only what moves [SI]. */
  reached(sizes: readonly number[]): readonly (number | undefined)[] {
    return this.trial.reached(sizes);
  }

  /** The same from scratch: the sizes written into the build, the build evaluated anew. */
  reachedAnew(sizes: readonly number[]): readonly (number | undefined)[] {
    const whole = this.wanted.reduce(
      (one, { path, unit, place }, index) =>
        withField(one, path, writeSize(sizes[index]!, unit, fields.get(path)!.spec, place)),
      this.build,
    );
    const nominals = new Nominals(whole);
    return this.aims.map(({ id }) => nominals.size(id));
  }

  /** Whether every size stands on a step of its own, inside its bounds. */
  isOrderable(sizes: readonly number[]): boolean {
    return this.wanted.every(({ low, high, step, origin = 0 }, index) => {
      const size = sizes[index]!;
      const steps = (size - origin) / step;
      const inside = size >= low - 1e-6 * step && size <= high + 1e-6 * step;
      return inside && Math.abs(steps - Math.round(steps)) < 1e-4;
    });
  }

  /** Every combination of steps. */
  *steps(): Generator<readonly number[], void, void> {
    const lists = this.wanted.map((one) => {
      const [first, last] = stepsInside(one);
      return Array.from(
        { length: last - first + 1 },
        (_, index) => (one.origin ?? 0) + (first + index) * one.step,
      );
    });
    yield* combinations(lists);
  }

  /** A grid over the bounds, ends among it. */
  *grid(points: number): Generator<readonly number[], void, void> {
    yield* combinations(
      this.wanted.map(({ low, high }) =>
        Array.from({ length: points }, (_, index) => low + (index / (points - 1)) * (high - low)),
      ),
    );
  }
}

function* combinations(lists: readonly (readonly number[])[]): Generator<readonly number[], void, void> {
  const [first, ...rest] = lists;
  if (first === undefined) return void (yield []);
  for (const size of first) for (const others of combinations(rest)) yield [size, ...others];
}
