/** Gives the next number, from 0 up to and without 1, in steps of 2⁻⁵³. */
export type Random = () => number;

/** State of the generator: four whole numbers of 32 bits, not all 0. */
export type GeneratorState = readonly [number, number, number, number];

const rotated = (x: number, by: number) => (x << by) | (x >>> (32 - by));

/**
 * The generator xoshiro128** from a given state: whole numbers from 0 to 2³² − 1, the same on every machine, since
 * only whole numbers of 32 bits are handled. For drawing engines, never for secrets.
 *
 * Source: D. Blackman, S. Vigna, xoshiro128** 1.1, https://prng.di.unimi.it/xoshiro128starstar.c (public domain).
 */
export function xoshiro128(state: GeneratorState): () => number {
  let [a, b, c, d] = state;
  return () => {
    const result = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return result;
  };
}

/** Stirs 32 bits so that near numbers lead to far ones: the finaliser of MurmurHash3 (from memory). */
function stirred(x: number): number {
  let bits = x;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85eb_ca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2_ae35);
  return bits ^ (bits >>> 16);
}

/** A whole number of 32 bits from a name: FNV-1a over its UTF-16 code units (from memory). */
function numberOf(name: string): number {
  let bits = 0x811c_9dc5;
  for (let index = 0; index < name.length; index += 1)
    bits = Math.imul(bits ^ name.charCodeAt(index), 0x0100_0193);
  return bits;
}

/** The odd number nearest to 2³² over the golden ratio: multiples of it fill 32 bits evenly. */
const STEP = 0x9e37_79b9;

/**
 * Random numbers that only depend on what they are for: the same seed, name and count give the same numbers, whatever
 * else is drawn, in whatever order, on whatever machine.
 * @param seed whole number from 0 to 2³² − 1
 * @param name what is drawn, such as the path of a field
 * @param count which of many, from 0
 */
export function seeded(seed: number, name: string, count: number): Random {
  let bits = stirred(seed ^ stirred(numberOf(name) ^ stirred(count + 1)));
  const next = () => {
    bits = (bits + STEP) | 0;
    return stirred(bits);
  };
  const whole = xoshiro128([next(), next(), next(), next() | 1]);
  return () => ((whole() >>> 5) * 2 ** 26 + (whole() >>> 6)) / 2 ** 53;
}
