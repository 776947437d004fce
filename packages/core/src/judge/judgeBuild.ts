import type { Derivation } from "../derive/Derivation.ts";
import { deriveAll } from "../derive/deriveAll.ts";
import { placesOf } from "../derive/places.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import type { PositionKind } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Settlement } from "./howToSettle.ts";
import { judgeAll } from "./judgeAll.ts";
import { lookupOf } from "./lookupOf.ts";
import type { TraceBand, Verdict, VerdictWord } from "./Verdict.ts";
import { whereJudged } from "./whereJudged.ts";

type Values = ReadonlyMap<string, FieldValue>;
type Derivations = ReadonlyMap<string, Derivation>;

/** What a rule says at one cylinder, crankpin or main bearing. */
export interface PlaceVerdict {
  /** For people: `cylinder 3`. */
  readonly at: string;
  readonly verdict: VerdictWord;
  readonly nominally: boolean;
  /** The first value that the rule compares there, SI. */
  readonly value?: TraceBand;
}

/** The verdict of a rule, with the values on which it was reached. */
export interface Judged {
  readonly rule: CompiledRule;
  readonly verdict: Verdict;
  readonly values: Values;
  readonly derivations: Derivations;
  /** Where dimensions were measured by position: the worst place, and every place. */
  readonly at?: string;
  readonly places?: readonly PlaceVerdict[];
  /** For an open verdict: what would settle it. */
  readonly settlement?: Settlement;
}

/** Verdicts of places, the one first that stands for all. */
export const worstFirst: readonly VerdictWord[] = ["fails", "unknown", "open", "holds", "not-applicable"];

const required = (verdict: Verdict) => verdict.comparisons.filter((one) => one.in === "requires");

/** The least that is to spare at a place; places of one rule are compared, so units agree. */
function marginOf(verdict: Verdict): number {
  return Math.min(Infinity, ...required(verdict).flatMap(({ margin }) => (margin ? [margin.low] : [])));
}

function worse(a: Judged, b: Judged): number {
  return (
    worstFirst.indexOf(a.verdict.verdict) - worstFirst.indexOf(b.verdict.verdict) ||
    marginOf(a.verdict) - marginOf(b.verdict) ||
    0
  );
}

function placeVerdict({ verdict, at }: Judged): PlaceVerdict {
  const value = required(verdict).map((one) => one.value)[0];
  return {
    at: at ?? "",
    verdict: verdict.verdict,
    nominally: verdict.nominally,
    ...(typeof value === "object" ? { value } : {}),
  };
}

/** What the judging of places shares. */
interface Ground {
  readonly values: Values;
  readonly catalog: Catalog;
  /** Quantities of the engine as a whole: they serve wherever nothing that they rest on differs. */
  readonly derivations: Derivations;
  readonly differs: (fact: string) => boolean;
}

async function judgeAt(
  kind: PositionKind,
  rules: readonly CompiledRule[],
  { values, catalog, derivations: whole, differs }: Ground,
): Promise<readonly Judged[]> {
  const facts = rules.flatMap((rule) => rule.facts);
  const wanted = new Set(facts.filter((fact) => catalog.has(fact) && differs(fact)));
  const places: (readonly Judged[])[] = [];
  for (const place of placesOf(kind, values)) {
    const derivations = new Map([...whole, ...deriveAll(place.values, catalog, wanted)]);
    const verdicts = await judgeAll(rules, lookupOf(place.values, derivations));
    places.push(
      rules.map((rule, index) => ({
        rule,
        verdict: verdicts[index]!,
        values: place.values,
        derivations,
        at: place.label,
      })),
    );
  }
  return rules.flatMap((_, index) => {
    const all = places.map((place) => place[index]!);
    const worst = [...all].sort(worse)[0];
    return worst === undefined ? [] : [{ ...worst, places: all.map(placeVerdict) }];
  });
}

/**
 * Judges every rule on a build. Where dimensions were measured for each cylinder, crankpin or main bearing, a rule
 * that rests on them is judged at each, and the worst stands for the rule. A rule that rests on main bearings and
 * on cylinders is judged at each main bearing with the band over all cylinders.
 * @param values fields of the build, defaults filled in
 * @param more quantities to compute beside those that the rules ask for
 */
export async function judgeBuild(
  values: Values,
  rules: readonly CompiledRule[],
  catalog: Catalog,
  more: Iterable<string>,
): Promise<{ readonly derivations: Derivations; readonly judged: readonly Judged[] }> {
  const { whole, common, placed, differs } = whereJudged(values, rules, catalog);
  const asked = rules.flatMap((rule) => rule.facts).filter((fact) => catalog.has(fact));
  const derivations = deriveAll(whole, catalog, new Set([...asked, ...more]));
  const verdicts = await judgeAll(common, lookupOf(whole, derivations));
  const judged: Judged[] = common.map((rule, index) => ({
    rule,
    verdict: verdicts[index]!,
    values: whole,
    derivations,
  }));
  for (const { kind, rules: here } of placed)
    judged.push(...(await judgeAt(kind, here, { values, catalog, derivations, differs })));
  judged.sort((a, b) => (a.rule.file.id < b.rule.file.id ? -1 : 1));
  return { derivations, judged };
}
