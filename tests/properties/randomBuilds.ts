import type { DimensionValue, FieldValue } from "trialfit";
import { inputSpec } from "../../packages/core/src/derive/quantityDraws.test-support.ts";

export type Values = ReadonlyMap<string, FieldValue>;
export type Random = () => number;

/** Farthest that a dimension is shifted, as a share of itself. */
const FARTHEST = 0.03;
/** Powers of ten over which the reach of a build is drawn: clearances are a ten-thousandth of what they lie between. */
const DECADES = 4;
/** Greatest factor of a tolerance. */
const WIDEST = 3;

const within = (value: number, [least, most]: readonly [number, number]) =>
  Math.min(most, Math.max(least, value));

function changed(values: Values, change: (path: string, value: DimensionValue) => DimensionValue): Values {
  return new Map(
    [...values].map(([path, value]) => [path, value.kind === "dimension" ? change(path, value) : value]),
  );
}

/**
 * A build near to another: every dimension shifted by up to 3 % of itself, every tolerance made 0 to 3 times as wide,
 * all inside of what the field can be. How far the dimensions of one build go is drawn too, evenly over the powers of
 * ten from 0.0003 % to 3 %, so that its parts also fit together sometimes. Counts stay.
 * @param values fields of the build, defaults filled in
 */
export function randomBuild(values: Values, random: Random): Values {
  const reach = FARTHEST * 10 ** (-DECADES * random());
  return changed(values, (path, value) => {
    const spec = inputSpec(path, new Map());
    if (spec?.range === undefined || spec.counted) return value;
    const nominal = within(value.nominal * (1 + reach * (2 * random() - 1)), spec.range);
    const factor = WIDEST * random();
    return {
      ...value,
      nominal,
      low: Math.min(nominal, Math.max(spec.range[0], nominal - factor * (value.nominal - value.low))),
      high: Math.max(nominal, Math.min(spec.range[1], nominal + factor * (value.high - value.nominal))),
    };
  });
}

/** The same build known better: every band shrunk by a factor of its own, about a point of its own inside of it. */
export function refinedBuild(values: Values, random: Random): Values {
  return changed(values, (_, value) => {
    const [factor, place] = [random(), random()];
    if (value.low === value.high) return value;
    const nominal = value.low + place * (value.high - value.low);
    const towards = (end: number) => nominal + factor * (end - nominal);
    return { ...value, nominal, low: towards(value.low), high: towards(value.high) };
  });
}

/** One engine within the tolerances: path → value [SI]. Half of the engines have some or all dimensions at an end. */
export function randomEngine(values: Values, random: Random): ReadonlyMap<string, number> {
  const style = random();
  const atEnd = style < 0.5 ? 0 : style < 0.75 ? 0.5 : 1;
  const engine = new Map<string, number>();
  for (const [path, value] of values) {
    if (value.kind !== "dimension" || value.low === value.high) continue;
    const share = random() < atEnd ? Math.round(random()) : random();
    engine.set(path, value.low + share * (value.high - value.low));
  }
  return engine;
}
