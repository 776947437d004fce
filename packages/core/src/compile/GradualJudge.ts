import type { Derivation } from "../derive/Derivation.ts";
import { quantities } from "../derive/generated/quantities.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { PartialJudge, PartialJudgeCounts, PartialJudgeInput, PartKind } from "./PartialJudge.ts";
import { costOf } from "./partial/costOf.ts";
import { PartialValues } from "./partial/PartialValues.ts";
import { RememberedFacts } from "./partial/RememberedFacts.ts";
import { NOT_JUDGED, RuleMemory } from "./partial/RuleMemory.ts";
import { refuseChoice } from "./partial/refuseChoice.ts";
import { type StagedGround, StagedRules } from "./partial/StagedRules.ts";
import { planQuantities, type QuantityPlan } from "./planQuantities.ts";
import { VerdictCode, verdictCodes } from "./verdictCodes.ts";

/**
 * Judges combinations of parts while they are being chosen, as {@link PartialJudge} says. Every quantity is derived
 * once for each different set of parts that can change it, and not before a verdict hangs on it; every rule is judged
 * by its compiled form, once for each such set where they are not too many.
 */
export class GradualJudge implements PartialJudge {
  readonly kinds: readonly PartKind[];
  readonly rules: readonly CompiledRule[];
  private readonly plan: QuantityPlan;
  private readonly staged: StagedRules;
  private readonly values: PartialValues;
  private readonly facts: RememberedFacts;
  private readonly memories: readonly RuleMemory[];
  private readonly every: readonly number[];
  private readonly options: Int32Array;
  private count = 0;
  private asked = 0;
  private judged = 0;
  /** Verdicts as they were asked for last, and the first level that was chosen anew since then. */
  private readonly codes: Uint8Array;
  private stale = -1;
  private readonly ground: StagedGround;

  /** @throws RangeError when parts of two kinds give the same field */
  constructor(input: PartialJudgeInput) {
    this.kinds = input.kinds;
    this.rules = input.rules;
    this.plan = planQuantities(input);
    this.staged = new StagedRules(input.rules, (name) => costOf(quantities, name));
    this.options = new Int32Array(input.kinds.length);
    const hasPlaces = this.plan.facts.some(({ differs }) => differs);
    this.values = new PartialValues(input, hasPlaces);
    this.facts = new RememberedFacts(this.plan.facts, this.staged.compiled.facts, this.values, this.options);
    this.ground = {
      put: (slot) => this.facts.put(slot, this.count),
      derive: (slot) => this.facts.derive(slot, this.count),
      values: () => this.values.values(this.count, this.options),
    };
    this.codes = new Uint8Array(input.rules.length);
    this.memories = this.plan.rules.map((rule) => new RuleMemory(rule, input.kinds.length));
    this.every = [...input.rules.keys()];
  }

  get chosen(): number {
    return this.count;
  }

  get counts(): PartialJudgeCounts {
    return { asked: this.asked, judged: this.judged, derived: this.facts.derived };
  }

  choose(level: number, option: number): void {
    refuseChoice(this.kinds, this.count, level, option);
    this.options[level] = option;
    this.stale = Math.min(this.stale, level);
    this.count = level + 1;
    this.values.forget(level);
  }

  failureAt(level: number): number {
    for (const rule of this.newsAt(level)) if (this.codeOf(rule) === VerdictCode.fails) return rule;
    return -1;
  }

  failuresAt(level: number): readonly number[] {
    return this.newsAt(level).filter((rule) => this.codeOf(rule) === VerdictCode.fails);
  }

  private newsAt(level: number): readonly number[] {
    if (level !== this.count - 1)
      throw new RangeError(`found level ${level}; expected ${this.count - 1}, the last that is chosen`);
    return level < 0 ? this.every : this.plan.newsAt[level]!;
  }

  word(rule: number): VerdictWord {
    return verdictCodes[this.codeOf(rule)]!;
  }

  private codeOf(rule: number): number {
    this.asked += 1;
    const memory = this.memories[rule]!;
    const depth = memory.depths[this.count]!;
    const known = memory.verdictsAt(depth);
    if (known === undefined) return this.judge(rule, depth);
    const key = memory.keys.key(this.options, depth);
    if (known[key] === NOT_JUDGED) known[key] = this.judge(rule, depth);
    return known[key]!;
  }

  private judge(rule: number, depth: number): number {
    this.judged += 1;
    return this.staged.code(rule, this.ground, this.isAtPlaces(rule, depth));
  }

  /** Before all is settled that says where, a rule is judged on what does not differ from place to place. */
  private isAtPlaces(rule: number, depth: number): boolean {
    const { isPlaced, levels } = this.plan.rules[rule]!;
    return isPlaced && depth === levels.length;
  }

  verdicts(): Uint8Array {
    const rules = this.stale < 0 ? this.every : (this.plan.settledFrom[this.stale] ?? []);
    for (const rule of rules) this.codes[rule] = this.codeOf(rule);
    this.stale = this.kinds.length;
    return this.codes;
  }

  margin(rule: number): number {
    const memory = this.memories[rule]!;
    const { levels } = this.plan.rules[rule]!;
    const known = memory.depths[this.count] === levels.length ? memory.marginsOfAll() : undefined;
    if (known === undefined) return this.measure(rule);
    const key = memory.keys.key(this.options);
    if (known[key] === NOT_JUDGED) known[key] = this.measure(rule);
    return known[key]!;
  }

  private measure(rule: number): number {
    return this.staged.margin(
      rule,
      this.ground,
      this.isAtPlaces(rule, this.memories[rule]!.depths[this.count]!),
    );
  }

  derivation(id: string): Derivation | undefined {
    const { slots, facts } = this.plan;
    if (!slots.has(id) || !quantities.has(id)) return undefined;
    return facts[slots.slotOf(id)]!.settledAt < this.count
      ? this.values.derive(id, this.count, this.options)
      : undefined;
  }

  levelsOf(rule: number): readonly number[] {
    return this.plan.rules[rule]!.levels;
  }

  sameAs(level: number): readonly number[] {
    const { of } = this.plan.classes[level]!;
    return Array.from(of, (number) => of.indexOf(number));
  }
}
