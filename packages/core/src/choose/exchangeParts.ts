import { munkres } from "munkres";
import { deriveInSteps } from "../derive/deriveAll.ts";
import { differingFields, type Place, placesOf } from "../derive/places.ts";
import { type Catalog, rootFinderOf } from "../derive/rootsOf.ts";
import type { Steps } from "../derive/Steps.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decideRule } from "../judge/decideRule.ts";
import type { Judged } from "../judge/Judged.ts";
import { lookupOf } from "../judge/lookupOf.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import { worstWord } from "../judge/worstPlace.ts";
import { parts } from "../read/buildSchema.ts";
import type { PartSpec, PositionKind } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import type { ReportExchange } from "../report/Report.ts";

type Values = ReadonlyMap<string, FieldValue>;

const WEIGHT = { stop: 100, caution: 10, note: 1 } as const;
const BADNESS: Readonly<Record<VerdictWord, number>> = {
  fails: 4,
  unknown: 2,
  open: 1,
  holds: 0,
  "not-applicable": 0,
};
/** Cost of moving a part that could stay, far below that of any verdict: the fewest moves of equal outcome. */
const MOVE = 1e-3;

/** What one part of a kind, by number, would make of a place: the place with this part's measured sizes. */
function withPart(place: Place, item: Place, paths: readonly string[]): Values {
  const values = new Map(place.values);
  for (const path of paths) {
    const value = item.values.get(path);
    if (value === undefined) values.delete(path);
    else values.set(path, value);
  }
  return values;
}

function* wordsAt(
  values: Values,
  rules: readonly CompiledRule[],
  catalog: Catalog,
): Steps<readonly VerdictWord[]> {
  const wanted = new Set(rules.flatMap((rule) => rule.facts).filter((fact) => catalog.has(fact)));
  const lookup = lookupOf(values, yield* deriveInSteps(values, catalog, wanted));
  return rules.map((rule) => decideRule(rule, lookup));
}

const costOf = (words: readonly VerdictWord[], rules: readonly CompiledRule[]) =>
  words.reduce((sum, word, index) => sum + BADNESS[word] * WEIGHT[rules[index]!.file.otherwise.weight], 0);

/** The words of every rule at every place, for one way of placing the parts. */
type Placing = readonly (readonly VerdictWord[])[];

/** Rules whose worst place is better in one placing than in another, or undefined where any is worse. */
function bettered(rules: readonly CompiledRule[], before: Placing, after: Placing) {
  const pairs = rules.map((rule, index) => ({
    rule: rule.file.id,
    before: worstWord(before.map((words) => words[index]!)),
    after: worstWord(after.map((words) => words[index]!)),
  }));
  if (pairs.some((pair) => BADNESS[pair.after] > BADNESS[pair.before])) return undefined;
  return pairs.filter((pair) => BADNESS[pair.after] < BADNESS[pair.before]);
}

function* exchange(
  { key }: PartSpec,
  per: PositionKind,
  paths: readonly string[],
  { values, catalog, judged, rests }: Ground,
): Steps<ReportExchange | undefined> {
  const rules = judged
    .filter((one) => one.places !== undefined && rests(one.rule, paths))
    .map(({ rule }) => rule);
  const wanting = rules.filter((rule) =>
    judged.some((one) => one.rule === rule && BADNESS[one.verdict.verdict] > 0),
  );
  const places = placesOf(per, values);
  if (wanting.length === 0 || places.length < 2) return undefined;
  const costs: number[][] = [];
  for (const place of places) {
    const row: number[] = [];
    for (const item of places) {
      const words = yield* wordsAt(withPart(place, item, paths), wanting, catalog);
      row.push(costOf(words, wanting) + (item === place ? 0 : MOVE));
    }
    costs.push(row);
  }
  const chosen = munkres(costs);
  const total = chosen.reduce((sum, [place, item]) => sum + costs[place]![item]!, 0);
  const stay = costs.reduce((sum, row, index) => sum + row[index]!, 0);
  if (total > stay - 0.5) return undefined;
  const itemAt = new Map(chosen);
  const placing = function* (item: (place: number) => number): Steps<Placing> {
    const words: (readonly VerdictWord[])[] = [];
    for (const [index, place] of places.entries())
      words.push(yield* wordsAt(withPart(place, places[item(index)]!, paths), rules, catalog));
    return words;
  };
  const before = yield* placing((place) => place);
  const betters = bettered(rules, before, yield* placing((place) => itemAt.get(place)!));
  if (betters === undefined || betters.length === 0) return undefined;
  const moves = chosen.flatMap(([place, item]) =>
    place === item ? [] : [{ from: item + 1, to: place + 1 }],
  );
  return { part: key, per, moves: moves.sort((a, b) => a.from - b.from), betters };
}

interface Ground {
  readonly values: Values;
  readonly catalog: Catalog;
  readonly judged: readonly Judged[];
  readonly rests: (rule: CompiledRule, paths: readonly string[]) => boolean;
}

/**
 * Better places for parts that were measured one by one and can change places (pistons, rods, shells): for each kind
 * of part the assignment with the least weight of rules that do not hold, solved exactly (Munkres), with the fewest
 * moves. Proposed only where the worst place of some rule gets better and that of none gets worse. Kinds of parts
 * are looked at one by one, the others staying where they are.
 * @param judged verdicts by place
 */
export function* exchangeParts(
  values: Values,
  catalog: Catalog,
  judged: readonly Judged[],
): Steps<readonly ReportExchange[]> {
  const differing = differingFields(values);
  const finder = rootFinderOf(catalog, [...values.keys(), ...differing.keys()]);
  const rests = (rule: CompiledRule, paths: readonly string[]) =>
    rule.facts.some((fact) => paths.some((path) => finder.rootsOf(fact).has(path)));
  const exchanges: ReportExchange[] = [];
  for (const { spec } of parts) {
    if (spec.exchangeable !== true) continue;
    const mine = [...differing].filter(([path]) => path.startsWith(`${spec.key}.`));
    const per = mine[0]?.[1];
    const paths = mine.filter(([, kind]) => kind === per).map(([path]) => path);
    if (per === undefined) continue;
    const found = yield* exchange(spec, per, paths, { values, catalog, judged, rests });
    if (found !== undefined) exchanges.push(found);
  }
  return exchanges;
}
