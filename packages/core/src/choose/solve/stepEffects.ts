import type { Trial } from "./Trial.ts";

/** What half a step of every wanted dimension does to every aim, by aim and dimension [SI]; 0 where it cannot be said. */
export function halfSteps(trial: Trial, sizes: readonly number[]): readonly (readonly number[])[] {
  const at = trial.reached(sizes);
  const moved = trial.wanted.map(({ low, high, step }, index) =>
    low === high ? at : trial.reached(sizes.with(index, sizes[index]! + step / 2)),
  );
  return at.map((value, aim) =>
    moved.map((values) => {
      const there = values[aim];
      return value === undefined || there === undefined ? 0 : Math.abs(there - value);
    }),
  );
}

/** How far half a step of each wanted dimension moves the aim that it moves most, in allowances. */
export function stepEffects(trial: Trial, sizes: readonly number[]): readonly number[] {
  const effects = halfSteps(trial, sizes);
  return trial.wanted.map((_, index) =>
    trial.aims.reduce((most, { allowance }, aim) => Math.max(most, effects[aim]![index]! / allowance), 0),
  );
}
