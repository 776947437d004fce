import { halfSteps } from "./stepEffects.ts";
import type { Trial } from "./Trial.ts";
import { type Aim, wrongBy } from "./Wanted.ts";

/** Room for the noise of the arithmetic. */
const NOISE = 1 + 1e-9;

function widened(trial: Trial, by: (aim: Aim, index: number) => number): Trial {
  return trial.withAims(
    trial.aims.map((aim, index) =>
      aim.stated ? aim : { ...aim, allowance: Math.max(aim.allowance, by(aim, index)) },
    ),
  );
}

/** The same with what half a step of every wanted dimension does, allowed to aims that state no allowance: the most that rounding costs. */
export function allowSteps(trial: Trial, sizes: readonly number[]): Trial {
  const effects = halfSteps(trial, sizes);
  return widened(
    trial,
    ({ allowance }, index) => allowance + effects[index]!.reduce((sum, one) => sum + one, 0),
  );
}

/**
 * The same with what half a step does of the dimension that moves the aim least: as near as the aim can be brought when
 * the others are on their steps. A bound without an allowance is kept, since a size can be rounded to the right side.
 */
export function allowFinest(trial: Trial, sizes: readonly number[]): Trial {
  const effects = halfSteps(trial, sizes);
  return widened(trial, ({ allowance, kind }, index) => {
    const moving = effects[index]!.filter((one) => one > 0);
    return kind !== "equal" || moving.length === 0 ? allowance : allowance + Math.min(...moving);
  });
}

/** The same, as far as the sizes found keep to it, and no farther: by this every other solution is judged. */
export function allowReached(finest: Trial, sizes: readonly number[]): Trial {
  const reached = finest.reached(sizes);
  return widened(finest, (aim, index) => Math.abs(wrongBy(aim, reached[index] ?? aim.value)) * NOISE);
}
