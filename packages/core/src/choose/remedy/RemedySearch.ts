import { quantities } from "../../derive/generated/quantities.ts";
import { differingFields } from "../../derive/places.ts";
import { rootFinderOf } from "../../derive/rootsOf.ts";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { decidingFacts } from "../../judge/decidingFacts.ts";
import { whereJudged } from "../../judge/whereJudged.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import { NAMED } from "./brokenText.ts";
import type { Judgement } from "./Consequences.ts";
import { commonShare } from "./commonShare.ts";
import { FieldSearch } from "./FieldSearch.ts";
import { Ladder } from "./Ladder.ts";
import type { FindingRemedies, NoRemedy, Remedy } from "./Remedy.ts";
import { rankOthers, rankRemedies } from "./rankRemedies.ts";
import { Standing } from "./Standing.ts";
import { StateFacts } from "./StateFacts.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** The lightest weight: of what must not break by a clean change. */
const ANY = "note";

/** The search over one build: its dimensions, what rests on each, and what each can do. */
export class RemedySearch {
  private readonly values: Values;
  private readonly base: Standing;
  private readonly rootsBy: ReadonlyMap<CompiledRule, ReadonlySet<string>>;
  private readonly words: ReadonlyMap<string, ReportVerdict>;
  private readonly searches = new Map<string, FieldSearch>();

  constructor(values: Values, rules: readonly CompiledRule[], verdicts: readonly ReportVerdict[]) {
    this.values = values;
    const finder = rootFinderOf(quantities, [...values.keys(), ...differingFields(values).keys()]);
    const { placed } = whereJudged(values, rules, quantities);
    const kinds = new Map(
      placed.flatMap(({ kind, rules: there }) => there.map((rule) => [rule, kind] as const)),
    );
    this.base = new Standing(
      new StateFacts(values, { catalog: quantities, finder, placedAt: (rule) => kinds.get(rule) }),
    );
    this.words = new Map(verdicts.map((verdict) => [verdict.rule, verdict]));
    this.rootsBy = new Map(
      rules
        .filter((rule) => this.words.has(rule.file.id))
        .map(
          (rule) =>
            [rule, new Set([...decidingFacts(rule)].flatMap((fact) => [...finder.rootsOf(fact)]))] as const,
        ),
    );
  }

  /** What a rule says of the build; what holds on paper and is to be measured holds here. */
  private judgement(rule: CompiledRule): Judgement {
    const { verdict, unmeasured, weight } = this.words.get(rule.file.id)!;
    return {
      rule,
      weight,
      word: unmeasured === undefined ? verdict : "holds",
      dear: [...decidingFacts(rule)].some((fact) => quantities.get(fact)?.shape === "guarded"),
    };
  }

  private searchOf(path: string): FieldSearch {
    let search = this.searches.get(path);
    if (search === undefined) {
      const resting = [...this.rootsBy].flatMap(([rule, roots]) =>
        roots.has(path) ? [this.judgement(rule)] : [],
      );
      search = new FieldSearch({ base: this.base, values: this.values, path, judgements: resting });
      this.searches.set(path, search);
    }
    return search;
  }

  /** Dimensions that are tried for one finding: none where it only waits for being measured. */
  dimensionsOf(rule: CompiledRule): readonly string[] {
    if (this.words.get(rule.file.id)!.unmeasured !== undefined) return [];
    return [...this.rootsBy.get(rule)!].filter((path) => this.values.get(path)?.kind === "dimension").sort();
  }

  /** Of the first that are too loose how closely all would have to be kept, where their own tolerance does not do. */
  private *withShares(rule: CompiledRule, others: readonly NoRemedy[]): Steps<readonly NoRemedy[]> {
    const paths = this.dimensionsOf(rule);
    const loose = others.filter(({ why, closer }) => why === "too-loose" && closer === undefined);
    const shares = new Map<NoRemedy, number | undefined>();
    for (const one of loose.slice(0, NAMED)) {
      const { path, nearest } = one;
      const value =
        nearest && new Ladder(this.values, path, nearest.to > nearest.from ? 1 : -1).at(nearest.steps);
      shares.set(one, yield* commonShare(this.base, rule, paths, value && { path, value }));
    }
    return others.map((one) => {
      const share = shares.get(one);
      return share === undefined ? one : { ...one, closer: { share } };
    });
  }

  /**
   * Remedies for one finding.
   * @param told called before each of its dimensions is tried
   */
  *remedies(rule: CompiledRule, told: () => void): Steps<FindingRemedies> {
    const { title, weight, verdict, settlement, unmeasured } = this.words.get(rule.file.id)!;
    const fixed: string[] = [];
    const remedies: Remedy[] = [];
    const compromises: Remedy[] = [];
    const without: FieldSearch[] = [];
    for (const path of this.dimensionsOf(rule)) {
      told();
      const search = this.searchOf(path);
      if (!search.changeable) {
        fixed.push(path);
        continue;
      }
      const found = yield* search.remedies(rule, ANY);
      remedies.push(...found);
      if (found.length === 0) without.push(search);
    }
    const others: NoRemedy[] = [];
    for (const search of without) {
      const found = remedies.length > 0 || weight === ANY ? [] : yield* search.remedies(rule, weight);
      compromises.push(...found);
      if (found.length === 0) others.push(yield* search.whyNot(rule, ANY, remedies.length === 0));
    }
    const found = remedies.length > 0 ? "achievable" : compromises.length > 0 ? "compromise" : "unachievable";
    return {
      rule: rule.file.id,
      title,
      weight,
      verdict: verdict as FindingRemedies["verdict"],
      state: unmeasured === undefined ? found : "measure",
      remedies: rankRemedies(remedies),
      compromises: rankRemedies(compromises),
      others:
        found === "unachievable" ? yield* this.withShares(rule, rankOthers(others)) : rankOthers(others),
      fixed,
      ...(settlement === undefined ? {} : { settlement }),
      ...(unmeasured === undefined ? {} : { unmeasured }),
    };
  }
}
