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
  const kept = new Map<string, T>();
  return (numbers) => {
    const key = names.map((name) => numbers[name]).join();
    const known = kept.get(key);
    const value = known ?? compute(numbers);
    kept.delete(key);
    kept.set(key, value);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return value;
  };
}
