import { influencesOf } from "../../derive/influencesOf.ts";
import type { Catalog } from "../../derive/rootsOf.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { Lookup } from "../../judge/decide.ts";
import { withLimits } from "../../judge/decideRule.ts";
import { decidingFacts } from "../../judge/decidingFacts.ts";
import type { Build } from "../../read/Build.ts";
import { placingFields } from "../../read/positions.ts";
import { atNominal } from "./aimRules.ts";
import { canFail } from "./canFail.ts";
import { FactMemory } from "./FactMemory.ts";
import { type Options, Projection } from "./Projection.ts";
import type { Question } from "./Question.ts";
import { Remembered } from "./Remembered.ts";
import { askRule, askRuleAtPlaces, NOT_CHOSEN, type RuleOutcome } from "./RuleAsked.ts";
import { type Miss, missOf } from "./relativeMargin.ts";

/**
 * Judges rules on combinations of which some parts are not chosen yet. Facts that may rest on such a part count as
 * missing, so a rule fails only if it fails whatever is chosen later. What was found is remembered by the groups of
 * like parts that a rule can tell apart.
 *
 * Beside `GradualJudge` of `compile`, which walks kinds in one order and gives codes at the least cost, this one answers
 * what a search has to explain: kinds in any order, aims at nominal values beside the rules, any catalog of quantities,
 * and of each answer its margin, what it misses, and whether only a person's word is missing. Their words are held to
 * each other in `tests/differential/projectedJudge.test.ts`.
 */
export class ProjectedJudge {
  readonly rules: readonly CompiledRule[];
  /** Verdicts that were worked out anew. */
  judged = 0;
  readonly memory: FactMemory;
  private readonly catalog: Catalog;
  private readonly kinds: readonly (readonly Options[])[];
  private readonly facts: readonly (readonly string[])[];
  private readonly asked = new Map<string, Question>();
  private readonly dear = new Map<string, boolean>();
  /** True where any dimension was measured by position: then rules are judged at places, each as a whole. */
  private readonly placed: boolean;

  /** How many of the rules are of the catalog; those after them are aims. */
  private readonly catalogRules: number;

  /**
   * @param fixed the build without what is chosen
   * @param aims from `aimRules`; they come after the rules
   */
  constructor(
    fixed: Build,
    kinds: readonly (readonly Options[])[],
    rules: readonly CompiledRule[],
    catalog: Catalog,
    aims: readonly CompiledRule[] = [],
  ) {
    this.rules = [...rules, ...aims];
    this.catalogRules = rules.length;
    this.kinds = kinds;
    this.catalog = catalog;
    this.memory = new FactMemory(fixed, kinds, catalog);
    const positioned = ({ values }: Options) =>
      [...values.values()].some((value) => value.kind === "dimension" && value.positions !== undefined);
    this.placed = positioned(fixed) || kinds.some((options) => options.some(positioned));
    this.facts = this.rules.map((rule) => (this.placed ? rule.facts : [...decidingFacts(rule)]));
  }

  /** Kinds on which a rule may rest, ascending. */
  kindsOf(index: number): readonly number[] {
    return this.question(index, () => true)!.kinds;
  }

  /**
   * A rule by the facts that rest on chosen kinds only.
   * @returns undefined where these alone cannot make it fail and it is not whole
   */
  question(index: number, isChosen: (kind: number) => boolean): Question | undefined {
    const rule = this.rules[index]!;
    const all = this.facts[index]!;
    const facts = all.filter((fact) => this.memory.kindsOf(fact).every(isChosen));
    const whole = facts.length === all.length;
    if (!whole && (this.placed || !canFail(rule, (fact) => facts.includes(fact)))) return undefined;
    const key = `${index} ${facts.join()}`;
    let question = this.asked.get(key);
    if (question === undefined) {
      const fields = new Set(facts.flatMap((fact) => [...influencesOf(this.catalog, fact)]));
      if (this.placed) for (const field of placingFields) fields.add(field);
      const projection = new Projection(this.kinds, fields);
      const kept = {
        facts: new Set(facts),
        projection,
        memory: new Remembered<RuleOutcome>(projection.size),
      };
      const dear = this.placed || facts.some((fact) => this.isDear(fact));
      question = {
        rule,
        index,
        whole,
        isAim: index >= this.catalogRules,
        dear,
        kinds: projection.kinds,
        ...kept,
      };
      this.asked.set(key, question);
    }
    return question;
  }

  private isDear(fact: string): boolean {
    const quantity = this.catalog.get(fact);
    if (quantity === undefined) return false;
    let dear = this.dear.get(fact);
    if (dear === undefined) {
      dear =
        quantity.shape === "guarded" || Object.values(quantity.inputs).some((input) => this.isDear(input));
      this.dear.set(fact, dear);
    }
    return dear;
  }

  /** What a rule says, its facts that are not settled taken as missing. */
  ask(question: Question, chosen: Int32Array): RuleOutcome {
    return question.memory.at(question.projection.key(chosen), () => this.find(question, chosen));
  }

  private find(question: Question, chosen: Int32Array): RuleOutcome {
    this.judged += 1;
    const seen = question.isAim ? atNominal : (lookup: Lookup) => lookup;
    if (this.placed) return askRuleAtPlaces(question.rule, this.memory.valuesOf(chosen), this.catalog, seen);
    return askRule(question.rule, this.lookup(question, chosen));
  }

  private lookup({ facts, isAim }: Question, chosen: Int32Array): Lookup {
    const lookup: Lookup = (fact) => (facts.has(fact) ? this.memory.at(fact, chosen) : NOT_CHOSEN);
    return isAim ? atNominal(lookup) : lookup;
  }

  /** What the quantity of an aim comes to at nominal values [SI]; undefined where it cannot be worked out. */
  reached(question: Question, chosen: Int32Array): number | undefined {
    const fact = this.memory.at(question.rule.facts[0]!, chosen);
    return fact.kind === "band" ? fact.nominal : undefined;
  }

  /** For a rule that fails: on which comparison, and by how much. Undefined where it is judged at places. */
  miss(question: Question, chosen: Int32Array): (Miss & { readonly lookup: Lookup }) | undefined {
    if (this.placed) return undefined;
    const lookup = withLimits(question.rule, this.lookup(question, chosen));
    const miss = missOf(question.rule.requires, lookup);
    return miss === undefined ? undefined : { ...miss, lookup };
  }
}
