/**
 * Arrays of numbers in one piece of memory: to get memory is dear, and sweeps ask for it thousands of times.
 * @param count how many
 * @param length numbers in each
 * @returns the arrays, all zero, none of which shares a number with another
 * @throws RangeError when a length cannot be
 *
 * Source: definition.
 */
export function arraysOf(count: number, length: number): readonly Float64Array[] {
  const all = new Float64Array(count * length);
  return Array.from({ length: count }, (_, k) => all.subarray(k * length, (k + 1) * length));
}
