/** The bits of one number at a time. */
const number = new Float64Array(1);
const bits = new Uint32Array(number.buffer);

/** A whole number for a point, alike for equal points and mostly another for others. */
export function hashOf(point: Float64Array): number {
  let hash = 0;
  for (let index = 0; index < point.length; index += 1) {
    number[0] = point[index]!;
    hash = Math.imul(hash ^ bits[0]!, 0x9e3779b1);
    hash = Math.imul(hash ^ (hash >>> 15) ^ bits[1]!, 0x85ebca6b);
  }
  return hash ^ (hash >>> 13);
}
