import type { Route } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

type Numbers = Readonly<Record<string, number>>;

/** Where valves stand along the crankshaft, and how many there are. */
export function alongInputs(...which: readonly Side[]): Readonly<Record<string, string>> {
  return Object.fromEntries(
    which.flatMap((side) => {
      const { index, part } = sides[side];
      return [
        [`y_${index}`, `${part}.offsetAlong`],
        [`n_v${index}`, `${part}.perCylinder`],
      ];
    }),
  );
}

/** As entered; else one valve alone is taken to stand in the plane through the cylinder axis. */
export function alongRoutes(...which: readonly Side[]): readonly [Route, Route] {
  return [
    { needs: which.map((side) => `y_${sides[side].index}`) },
    {
      needs: [],
      assumes:
        "a single valve stands in the plane through the cylinder axis, square to the crankshaft: no offset along it is entered",
    },
  ];
}

/**
 * Offset of a valve along the crankshaft [m].
 * @throws RangeError for several valves whose offset is not entered: they cannot all stand in one plane
 */
export function alongOf(side: Side, n: Numbers): number {
  const { index, part } = sides[side];
  const entered = n[`y_${index}`];
  if (entered !== undefined) return entered;
  const count = n[`n_v${index}`]!;
  if (count > 1)
    throw new RangeError(`${count} ${side} valves do not stand in one plane: enter ${part}.offsetAlong`);
  return 0;
}
