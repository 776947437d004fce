import { version } from "../../derive/generated/version.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Build } from "../../read/Build.ts";
import { InputError } from "../../read/Problem.ts";
import { aimRules } from "./aimRules.ts";
import { fingerprintOf } from "./fingerprintOf.ts";
import { type Plan, planSearch } from "./Plan.ts";
import { ProjectedJudge } from "./ProjectedJudge.ts";
import { Recorder } from "./Recorder.ts";
import { inShares } from "./readWeights.ts";
import { requireColumns } from "./requireColumns.ts";
import { Scoring } from "./Scoring.ts";
import { type SearchResult, type SearchTerms, searchResultSchema } from "./SearchResult.ts";
import { type SearchSpace, spaceOf } from "./SearchSpace.ts";
import type { SearchOptions } from "./search.ts";
import { MOST_SHARDS, searchTerms, whole } from "./searchTerms.ts";
import { Walk } from "./Walk.ts";

function refusal(found: string, expected: string): InputError {
  const place = { file: "the search to go on with", line: undefined, column: undefined, field: "" };
  return new InputError([{ ...place, found, expected }]);
}

/** A search that can be looked at, stopped and gone on with: the walk, and what is said of it. */
export class SearchRun {
  readonly walk: Walk;
  readonly space: SearchSpace;
  readonly judge: ProjectedJudge;
  readonly plan: Plan;
  private readonly build: Build;
  private readonly terms: SearchTerms;
  private readonly shard: { readonly part: number; readonly of: number };
  private readonly fingerprint: string;
  private readonly recorder: Recorder;

  /** @throws as `search` */
  constructor(
    build: Build,
    rules: readonly CompiledRule[],
    catalog: Catalog,
    options: SearchOptions & { readonly set?: string | undefined },
  ) {
    this.build = build;
    this.space = spaceOf(build, options.candidates, rules, options);
    const { kinds, fixed } = this.space;
    const aims = aimRules(build, catalog);
    this.terms = searchTerms(options, this.space);
    const { weights, front, best, demand, countAll } = this.terms;
    requireColumns(kinds, weights, front);
    const of = whole("shards", options.shard?.of ?? 1, 1, MOST_SHARDS);
    this.shard = { part: whole("shard", options.shard?.part ?? 1, 1, of), of };
    const sizes = kinds.map(({ candidates }) => candidates.length);
    this.judge = new ProjectedJudge(
      fixed,
      kinds.map(({ candidates }) => candidates),
      rules,
      catalog,
      aims,
    );
    this.plan = planSearch(this.judge, sizes);
    this.fingerprint = fingerprintOf(this.space, [...rules, ...aims], this.terms);
    const shard = { part: this.shard.part - 1, of };
    const scoring = new Scoring(kinds, inShares(weights), front);
    this.walk = new Walk({
      plan: this.plan,
      judge: this.judge,
      scoring,
      sizes,
      best,
      demand,
      countAll,
      shard,
    });
    this.recorder = new Recorder(this.space, this.judge, scoring, demand);
    if (options.from !== undefined) this.goOn(options.from);
  }

  /** Takes up what a search on the same terms left. @throws InputError when it is of another one, or is none */
  private goOn(from: unknown): void {
    const read = searchResultSchema.safeParse(from);
    if (!read.success) throw refusal("no result of a search", "what `search` returned when it was stopped");
    const { fingerprint, shard, complete, place = [] } = read.data;
    if (fingerprint !== this.fingerprint || shard.part !== this.shard.part || shard.of !== this.shard.of)
      throw refusal(
        "a result of another search",
        "the same build, lists, rules, objective and shard, unchanged",
      );
    this.recorder.takeUp(read.data, this.walk);
    if (complete) this.walk.end();
    else this.walk.goTo(this.optionsOf(place));
  }

  private optionsOf(place: readonly (string | null)[]): readonly number[] {
    const options = place.map((id, level) => {
      const kind = this.plan.order[level];
      const candidates = kind === undefined ? [] : this.space.kinds[kind]!.candidates;
      return id === null ? -1 : candidates.findIndex((one) => one.id === id);
    });
    if (options.length === 0 || options.some((option, level) => option < 0 && place[level] !== null))
      throw refusal("a place that is not in the lists", "what `search` returned when it was stopped");
    return options;
  }

  /** What was found by now. */
  result(): SearchResult {
    const { walk, space, plan, judge } = this;
    const { kinds } = space;
    const idOf = (level: number, option: number) => kinds[plan.order[level]!]!.candidates[option]?.id ?? null;
    return {
      format: "trialfit-search",
      formatVersion: 1,
      trialfit: version,
      build: this.build.name,
      fingerprint: this.fingerprint,
      terms: this.terms,
      kinds: plan.order.map((kind) => {
        const { part, candidates } = kinds[kind]!;
        return { part: part.key, label: part.label, count: candidates.length };
      }),
      shard: this.shard,
      complete: walk.done,
      ...(walk.done ? {} : { place: walk.path.place.map((option, level) => idOf(level, option)) }),
      combinations: kinds.reduce((product, { candidates }) => product * candidates.length, 1),
      reached: walk.tally.reached,
      outranked: walk.tally.outranked,
      ...this.recorder.standings(walk, this.terms.front),
      fellOut: this.recorder.fellOut(walk.tally),
      unseen: [...space.unseen],
      effort: { steps: walk.steps, judged: judge.judged, facts: judge.memory.found },
    };
  }
}
