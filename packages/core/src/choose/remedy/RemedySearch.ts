import { quantities } from "../../derive/generated/quantities.ts";
import { differingFields } from "../../derive/places.ts";
import { rootFinderOf } from "../../derive/rootsOf.ts";
import type { Steps } from "../../derive/Steps.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { decidingFacts } from "../../judge/decidingFacts.ts";
import { whereJudged } from "../../judge/whereJudged.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import type { ReportVerdict } from "../../report/Report.ts";
import type { Judgement } from "./Consequences.ts";
import { FieldSearch } from "./FieldSearch.ts";
import type { FindingRemedies, NoRemedy, Remedy } from "./Remedy.ts";
import { Standing } from "./Standing.ts";
import { StateFacts } from "./StateFacts.ts";
import { type WorkKind, works } from "./works.ts";

type Values = ReadonlyMap<string, FieldValue>;

const rank = Object.keys(works) as readonly WorkKind[];

const byWork = (a: Remedy, b: Remedy): number =>
  rank.indexOf(a.work) - rank.indexOf(b.work) || a.steps - b.steps || (a.path < b.path ? -1 : 1);

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
    const { verdict, unmeasured } = this.words.get(rule.file.id)!;
    return {
      rule,
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

  /**
   * Remedies for one finding.
   * @param told called before each of its dimensions is tried
   */
  *remedies(rule: CompiledRule, told: () => void): Steps<FindingRemedies> {
    const { title, weight, verdict, settlement, unmeasured } = this.words.get(rule.file.id)!;
    const remedies: Remedy[] = [];
    const others: NoRemedy[] = [];
    const fixed: string[] = [];
    for (const path of this.dimensionsOf(rule)) {
      told();
      const search = this.searchOf(path);
      if (!search.changeable) {
        fixed.push(path);
        continue;
      }
      const found = yield* search.search(rule);
      remedies.push(...found.remedies);
      if (found.not !== undefined) others.push(found.not);
    }
    const state = unmeasured !== undefined ? "measure" : remedies.length > 0 ? "achievable" : "unachievable";
    return {
      rule: rule.file.id,
      title,
      weight,
      verdict: verdict as FindingRemedies["verdict"],
      state,
      remedies: remedies.sort(byWork),
      others,
      fixed,
      ...(settlement === undefined ? {} : { settlement }),
      ...(unmeasured === undefined ? {} : { unmeasured }),
    };
  }
}
