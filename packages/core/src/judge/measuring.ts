import { Deriver } from "../derive/Deriver.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { DimensionValue, FieldValue } from "../read/FieldValue.ts";
import { decideRule } from "./decideRule.ts";
import { isRefuted } from "./isRefuted.ts";
import type { Judged } from "./Judged.ts";
import { lookupOf } from "./lookupOf.ts";
import type { VerdictWord } from "./Verdict.ts";

/** What an open verdict can become. */
export type SettledWord = Extract<VerdictWord, "holds" | "fails" | "not-applicable">;

/** One dimension to measure, and how well: half of the width of the band that it may then have, SI. */
export interface ToMeasure {
  readonly path: string;
  readonly uncertainty: number;
}

/** A build some of whose dimensions were measured, and came out as expected. */
export interface Measured {
  readonly values: ReadonlyMap<string, FieldValue>;
  readonly measure: readonly ToMeasure[];
}

/** A dimension as it is when it was measured to the given share of its tolerance, and came out as expected. */
function narrowed(value: DimensionValue, share: number): DimensionValue {
  const width = (share * (value.high - value.low)) / 2;
  return { ...value, low: value.nominal - width, high: value.nominal + width };
}

/** @param shares by path the share of its tolerance to which a dimension is measured; 0 for exactly */
export function measuring({ values }: Judged, shares: ReadonlyMap<string, number>): Measured {
  const tried = new Map<string, FieldValue>(values);
  const measure: ToMeasure[] = [];
  for (const [path, share] of shares) {
    const value = values.get(path);
    if (value?.kind !== "dimension") continue;
    const closer = narrowed(value, share);
    tried.set(path, closer);
    measure.push({ path, uncertainty: closer.high - closer.nominal });
  }
  return { values: tried, measure };
}

/** What the rule says when dimensions were measured so. */
function* wordWith({ values }: Measured, { rule, chain }: Judged, catalog: Catalog): Steps<VerdictWord> {
  // What is measured comes out at its nominal value, so that the engine at single values is the same.
  const deriver = Deriver.ofBands(values, catalog, chain);
  for (const fact of rule.facts) if (catalog.has(fact)) yield* deriver.derive(fact);
  return decideRule(rule, lookupOf(values, deriver.results));
}

/** Whether a rule surely says a word when dimensions were measured so. */
export function* settles(
  measured: Measured,
  judged: Judged,
  catalog: Catalog,
  word: SettledWord,
): Steps<boolean> {
  return !isRefuted(measured, judged, catalog, word) && (yield* wordWith(measured, judged, catalog)) === word;
}

/** A build every dimension of which came out as expected; the same for every verdict on it. */
const exact = new WeakMap<ReadonlyMap<string, FieldValue>, Measured>();

function exactly(judged: Judged): Measured {
  const { values } = judged;
  const measured =
    exact.get(values) ?? measuring(judged, new Map([...values.keys()].map((path) => [path, 0])));
  exact.set(values, measured);
  return measured;
}

/**
 * What an open verdict becomes when all its dimensions come out as expected.
 * @returns undefined where even that leaves it unsettled
 */
export function* wordAtNominal(judged: Judged, catalog: Catalog): Steps<SettledWord | undefined> {
  const word = yield* wordWith(exactly(judged), judged, catalog);
  return word === "holds" || word === "fails" || word === "not-applicable" ? word : undefined;
}
