import type { FieldValue } from "../read/FieldValue.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** A small seeded generator of numbers from 0 up to 1, so that a failure can be repeated. */
function generator(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Share of the values that are put at an end of their band, where the extremes mostly lie. */
const AT_ENDS = 0.5;

/**
 * Engines that the tolerances of a build allow: every dimension at some place of its band, its ends often.
 * @param values what the build gives
 * @param seed the same engines for the same seed
 * @param count how many
 */
export function* sampleEngines(values: Values, seed: number, count: number): Generator<Values> {
  const random = generator(seed);
  for (let sample = 0; sample < count; sample += 1)
    yield new Map(
      [...values].map(([path, value]) => {
        if (value.kind !== "dimension" || value.low === value.high) return [path, value];
        const share = random() < AT_ENDS ? Math.round(random()) : random();
        const nominal = value.low + share * (value.high - value.low);
        return [path, { ...value, nominal, low: nominal, high: nominal }];
      }),
    );
}
