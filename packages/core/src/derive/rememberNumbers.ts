import { hashOf } from "./hashOf.ts";

/** An answer, and the numbers that it was worked out from. */
interface Kept<T> {
  readonly point: readonly number[];
  readonly value: T;
}

const isSame = (one: readonly number[], other: Float64Array): boolean => {
  for (let index = 0; index < one.length; index += 1) if (one[index] !== other[index]) return false;
  return true;
};

/**
 * A computation that answers the same numbers from memory: what several quantities need at a point of their bands, and
 * what does not change when only other numbers are moved. What is refused is computed again.
 * @param names of the numbers that it takes
 * @param most answers to keep; the one that was asked for longest ago is dropped first
 */
export function rememberNumbers<N extends Readonly<Record<string, number>>, T>(
  names: readonly (keyof N)[],
  most: number,
  compute: (numbers: N) => T,
): (numbers: N) => T {
  // By hash: of two points that have the same one, the later takes the place of the earlier.
  const kept = new Map<number, Kept<T>>();
  const asked = new Float64Array(names.length);
  return (numbers) => {
    for (let index = 0; index < names.length; index += 1) asked[index] = numbers[names[index]!]!;
    const hash = hashOf(asked);
    const known = kept.get(hash);
    const entry =
      known !== undefined && isSame(known.point, asked)
        ? known
        : { point: Array.from(asked), value: compute(numbers) };
    kept.delete(hash);
    kept.set(hash, entry);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return entry.value;
  };
}
