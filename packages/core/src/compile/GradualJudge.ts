import type { Derivation } from "../derive/Derivation.ts";
import { quantities } from "../derive/generated/quantities.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import { worstFirst } from "../judge/worstPlace.ts";
import { compileSlots, type SlotRules } from "./compileSlots.ts";
import type { PartialJudge, PartialJudgeCounts, PartialJudgeInput, PartKind } from "./PartialJudge.ts";
import { groundsOf } from "./partial/groundsOf.ts";
import { PartialValues } from "./partial/PartialValues.ts";
import { RememberedFacts } from "./partial/RememberedFacts.ts";
import { NOT_JUDGED, RuleMemory } from "./partial/RuleMemory.ts";
import { planQuantities, type QuantityPlan } from "./planQuantities.ts";
import { VerdictCode, verdictCodes } from "./verdictCodes.ts";

/** Codes, the one first that stands for all places of an engine. */
const worstCodes = worstFirst.map((word) => verdictCodes.indexOf(word as (typeof verdictCodes)[number]));

/**
 * Judges combinations of parts while they are being chosen, as {@link PartialJudge} says. Every quantity is derived
 * once for each different set of parts that can change it, and not before a verdict hangs on it; every rule is judged
 * by its compiled form, once for each such set where they are not too many.
 */
export class GradualJudge implements PartialJudge {
  readonly kinds: readonly PartKind[];
  readonly rules: readonly CompiledRule[];
  private readonly plan: QuantityPlan;
  private readonly compiled: SlotRules;
  private readonly values: PartialValues;
  private readonly facts: RememberedFacts;
  private readonly memories: readonly RuleMemory[];
  private readonly every: readonly number[];
  private readonly options: Int32Array;
  private count = 0;
  private asked = 0;
  private judged = 0;
  /** The facts of one place of an engine, for rules that are judged at places. */
  private placed: SlotRules | undefined;

  /** @throws RangeError when parts of two kinds give the same field */
  constructor(input: PartialJudgeInput) {
    this.kinds = input.kinds;
    this.rules = input.rules;
    this.plan = planQuantities(input);
    this.compiled = compileSlots(input.rules);
    this.options = new Int32Array(input.kinds.length);
    this.values = new PartialValues(
      input,
      this.plan.facts.some(({ differs }) => differs),
    );
    this.facts = new RememberedFacts(this.plan.facts, this.compiled.facts, this.values, this.options);
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
    if (!Number.isInteger(level) || level < 0 || level > this.count || level >= this.kinds.length)
      throw new RangeError(
        `found level ${level}; expected 0 to ${Math.min(this.count, this.kinds.length - 1)}`,
      );
    const most = this.kinds[level]!.options.length - 1;
    if (!Number.isInteger(option) || option < 0 || option > most)
      throw new RangeError(`found option ${option} of ${this.kinds[level]!.name}; expected 0 to ${most}`);
    this.options[level] = option;
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
    const { slots, whenSlots, isPlaced, levels } = this.plan.rules[rule]!;
    if (isPlaced && depth === levels.length) return this.judgePlaces(rule);
    const judge = this.compiled.judges[rule]!;
    const dear = slots.filter((slot) => !this.facts.put(slot, this.count));
    let code = judge();
    // Until they are derived they are missing. By knowing more, only what is unknown can become anything, and what
    // holds can turn out not to be applicable.
    for (const slot of dear) {
      const can = code === VerdictCode.unknown || (code === VerdictCode.holds && whenSlots.has(slot));
      if (!can) continue;
      this.facts.derive(slot, this.count);
      code = judge();
    }
    return code;
  }

  /** Of each place what its facts come to, one after the other in the slots. */
  private atPlaces<T>(rule: number, come: (compiled: SlotRules) => T): readonly T[] {
    this.placed ??= compileSlots(this.rules);
    const { placed } = this;
    const values = this.values.values(this.count, this.options);
    return groundsOf(this.rules[rule]!, values).map((lookup) => {
      for (const slot of this.plan.rules[rule]!.slots)
        placed.facts.set(slot, lookup(this.plan.slots.names[slot]!));
      return come(placed);
    });
  }

  private judgePlaces(rule: number): number {
    const codes = this.atPlaces(rule, ({ judges }) => judges[rule]!());
    return worstCodes.find((code) => codes.includes(code)) ?? VerdictCode.notApplicable;
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
    const code = this.codeOf(rule);
    if (code === VerdictCode.unknown) return Number.NaN;
    if (code === VerdictCode.notApplicable) return Infinity;
    const { slots, isPlaced, levels } = this.plan.rules[rule]!;
    if (isPlaced && this.memories[rule]!.depths[this.count] === levels.length) {
      const margins = this.atPlaces(rule, (placed) => placed.margins[rule]!());
      return Math.min(...margins.filter((margin) => !Number.isNaN(margin)));
    }
    for (const slot of slots) if (!this.facts.put(slot, this.count)) this.facts.derive(slot, this.count);
    return this.compiled.margins[rule]!();
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
