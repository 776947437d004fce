import type { DimensionValue } from "../../read/FieldValue.ts";

/** A dimension of the same size whose band, at every place where it was measured, is a share of what it is. */
export function narrowDimension(value: DimensionValue, share: number): DimensionValue {
  const narrow = (one: DimensionValue): DimensionValue => ({
    ...one,
    low: one.nominal - share * (one.nominal - one.low),
    high: one.nominal + share * (one.high - one.nominal),
  });
  const { positions, elsewhere } = value;
  return {
    ...narrow(value),
    ...(positions === undefined
      ? {}
      : { positions: Object.fromEntries(Object.entries(positions).map(([at, one]) => [at, narrow(one)])) }),
    ...(elsewhere === undefined ? {} : { elsewhere: narrow(elsewhere) }),
  };
}
