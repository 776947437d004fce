import { InputError } from "../../read/Problem.ts";
import { PRICE_SHARES } from "../lists/PartsList.ts";
import { scoreOf, type Totals, vectorOf } from "./Objective.ts";
import { inShares } from "./readWeights.ts";
import {
  type FallenRule,
  type FoundParts,
  type NearestMissed,
  type SearchResult,
  searchResultSchema,
} from "./SearchResult.ts";
import { BestFew, type Entry, Front } from "./Standings.ts";

/** A result, and where it comes from, for messages. */
export interface ShardResult {
  readonly file: string;
  /** Plain data; untrusted. */
  readonly data: unknown;
}

function refuse(file: string, found: string, expected: string): never {
  throw new InputError([{ file, line: undefined, column: undefined, field: "", found, expected }]);
}

function readShards(shards: readonly ShardResult[]): readonly SearchResult[] {
  const results = shards.map(({ file, data }) => {
    const read = searchResultSchema.safeParse(data);
    if (!read.success) return refuse(file, "no result of a search", "what `search` returned, as JSON");
    if (!read.data.complete)
      return refuse(file, "a search that was stopped", "one that came to its end: go on with it first");
    return { file, result: read.data };
  });
  const [first] = results;
  if (first === undefined) return refuse("the shards", "nothing", "the results of all shards of one search");
  const { fingerprint, shard } = first.result;
  const seen = new Map<number, string>();
  for (const { file, result } of results) {
    if (result.fingerprint !== fingerprint || result.shard.of !== shard.of)
      refuse(
        file,
        "a result of another search",
        `a shard of the search of ${first.file}: same build, lists, rules, terms`,
      );
    const before = seen.get(result.shard.part);
    if (before !== undefined)
      refuse(file, `shard ${result.shard.part} once more`, `each once (it stands in ${before})`);
    seen.set(result.shard.part, file);
  }
  const lacking = Array.from({ length: shard.of }, (_, index) => index + 1).filter((part) => !seen.has(part));
  if (lacking.length > 0)
    refuse("the shards", `${seen.size} of ${shard.of}`, `also ${lacking.slice(0, 10).join(", ")}`);
  return results.map(({ result }) => result);
}

/** Order of ids as text, which is the order of their indices in a list. */
const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

interface Named extends Entry {
  readonly found: FoundParts;
}

/** Gives ids numbers, so that combinations of several results can be compared. */
function entriesOf(results: readonly SearchResult[]): (found: FoundParts) => Named {
  const { kinds, terms } = results[0]!;
  const all = results.flatMap(({ best, front = [] }) => [...best, ...front]);
  const idOf = ({ parts }: FoundParts, part: string) => parts.find((one) => one.part === part)?.id ?? "";
  const numbers = kinds.map(({ part }) => {
    const ids = [...new Set(all.map((found) => idOf(found, part)))].sort(byText);
    return new Map(ids.map((id, index) => [id, index]));
  });
  const weights = inShares(terms.weights);
  return (found) => {
    const { cost = 0, mass = 0, time = 0, margin } = found;
    const totals: Totals = { cost: Math.round(cost * PRICE_SHARES), mass, time, margin: margin?.value };
    return {
      chosen: kinds.map(({ part }, kind) => numbers[kind]!.get(idOf(found, part))!),
      score: scoreOf(weights, totals),
      vector: vectorOf(terms.front, totals),
      found,
    };
  };
}

/** Of what is known of a rule's nearest misses the nearest. */
export function nearer(
  a: NearestMissed | undefined,
  b: NearestMissed | undefined,
): NearestMissed | undefined {
  if (a === undefined || b === undefined) return a ?? b;
  return (b.relative ?? -Infinity) > (a.relative ?? -Infinity) ? b : a;
}

/** Rules that took combinations out, those first that took out most. */
export function mostFirst(rules: Iterable<FallenRule>): FallenRule[] {
  return [...rules].sort((a, b) => b.fails + b.unsettled - a.fails - a.unsettled || byText(a.rule, b.rule));
}

function mergeFallen(results: readonly SearchResult[]): FallenRule[] {
  const rules = new Map<string, FallenRule>();
  for (const one of results.flatMap(({ fellOut }) => fellOut)) {
    const { fails, unsettled, nearest } = rules.get(one.rule) ?? { fails: 0, unsettled: 0 };
    const near = nearer(nearest, one.nearest);
    const sum = { ...one, fails: fails + one.fails, unsettled: unsettled + one.unsettled };
    rules.set(one.rule, near === undefined ? sum : { ...sum, nearest: near });
  }
  return mostFirst(rules.values());
}

/**
 * One result from those of all shards of a search: the best of all, exactly as one search over everything finds them.
 * @throws InputError when a shard is missing, stands twice, was stopped, or is of another search
 */
export function mergeSearches(shards: readonly ShardResult[]): SearchResult {
  const results = readShards(shards);
  const [first] = results as [SearchResult];
  const entryOf = entriesOf(results);
  const compare = (a: readonly number[], b: readonly number[]) => {
    const at = a.findIndex((id, kind) => id !== b[kind]);
    return at < 0 ? 0 : a[at]! - b[at]!;
  };
  const few = new BestFew(first.terms.best, compare);
  const front = new Front(compare);
  for (const { best, front: ahead = [] } of results) {
    for (const found of best) few.add(entryOf(found));
    for (const found of ahead) front.add(entryOf(found));
  }
  const foundIn = (entries: readonly Entry[]) => entries.map((entry) => (entry as Named).found);
  const sum = (count: (result: SearchResult) => number) =>
    results.reduce((total, one) => total + count(one), 0);
  return {
    ...first,
    shard: { part: 1, of: 1 },
    reached: sum(({ reached }) => reached),
    outranked: sum(({ outranked }) => outranked),
    best: foundIn(few.entries),
    ...(first.front === undefined ? {} : { front: foundIn(front.sorted()) }),
    fellOut: mergeFallen(results),
    effort: {
      steps: sum(({ effort }) => effort.steps),
      judged: sum(({ effort }) => effort.judged),
      facts: sum(({ effort }) => effort.facts),
    },
  };
}
