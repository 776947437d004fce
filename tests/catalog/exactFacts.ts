import { type Build, type FieldValue, quantities } from "trialfit";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import type { Lookup } from "../../packages/core/src/judge/decide.ts";
import { DrawnFacts } from "../../packages/core/src/judge/drawnFacts.ts";

function withoutBand(value: FieldValue): FieldValue {
  if (value.kind !== "dimension") return value;
  const { positions: _, elsewhere: __, ...one } = value;
  return { ...one, low: one.nominal, high: one.nominal };
}

/**
 * The facts of a build at its nominal values: without tolerances nothing has to be searched for its extremes, which is
 * what takes time. What was measured place by place is taken at its nominal value for all of them.
 */
export function exactFacts(build: Build): Lookup {
  const values = new Map(
    [...withDefaults(build)].map(([path, value]) => [path, withoutBand(value)] as const),
  );
  return new DrawnFacts(values, values, quantities).engine(0, 0);
}
