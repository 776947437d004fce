/** Runs so long are sorted by insertion. */
const RUN = 12;

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
 * Source: insertion, then merging from short runs upwards, common practice.
 */
export function orderBy(numbers: Float64Array, count: number): Uint32Array {
  if (count > room.length) [room, other] = [new Uint32Array(2 * count), new Uint32Array(2 * count)];
  let [from, to] = [room, other];
  for (let index = 0; index < count; index += 1) {
    const first = index - (index % RUN);
    const number = numbers[index]!;
    let place = index;
    for (; place > first && numbers[from[place - 1]!]! > number; place -= 1) from[place] = from[place - 1]!;
    from[place] = index;
  }
  for (let run = RUN; run < count; run *= 2) {
    for (let start = 0; start < count; start += 2 * run) {
      const middle = Math.min(start + run, count);
      const end = Math.min(start + 2 * run, count);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place += 1) {
        const takesLeft = left < middle && (right >= end || numbers[from[left]!]! <= numbers[from[right]!]!);
        to[place] = takesLeft ? from[left++]! : from[right++]!;
      }
    }
    [from, to] = [to, from];
  }
  return from;
}
