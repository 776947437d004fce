/** Room that is used again: an order is walked through before the next one is asked for. */
let room = new Uint32Array(256);
let other = new Uint32Array(256);

/**
 * Indices in the order of rising numbers, of equal ones in the order in which they stand: what a sort of objects by a
 * comparison gives, without calling one.
 * @param numbers none of them NaN
 * @param count how many of them, from the first
 * @returns as many indices first; until the next call, what follows them is of no meaning
 *
 * Source: merging from runs of one upwards, common practice.
 */
export function orderBy(numbers: Float64Array, count: number): Uint32Array {
  if (count > room.length) [room, other] = [new Uint32Array(2 * count), new Uint32Array(2 * count)];
  let [from, to] = [room, other];
  for (let index = 0; index < count; index += 1) from[index] = index;
  for (let run = 1; run < count; run *= 2) {
    for (let start = 0; start < count; start += 2 * run) {
      const [middle, end] = [Math.min(start + run, count), Math.min(start + 2 * run, count)];
      let [left, right] = [start, middle];
      for (let place = start; place < end; place += 1) {
        const takesLeft = left < middle && (right >= end || numbers[from[left]!]! <= numbers[from[right]!]!);
        to[place] = takesLeft ? from[left++]! : from[right++]!;
      }
    }
    [from, to] = [to, from];
  }
  return from;
}
