import { everyRoot } from "../derive/everyRoot.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { differingFields } from "../derive/places.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decidingFacts } from "../judge/decidingFacts.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Build } from "../read/Build.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { BuildGround } from "./partial/BuildGround.ts";
import { costOf } from "./partial/costOf.ts";
import { StagedRules } from "./partial/StagedRules.ts";
import { verdictCodes } from "./verdictCodes.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Work that was done so far, whole numbers. */
export interface ChangingJudgeCounts {
  /** Quantities that were derived with their bands. */
  readonly derived: number;
  /** Verdicts that were reached. */
  readonly judged: number;
}

/**
 * Judges one build while it is changed entry by entry: a change works out again only the quantities that rest on it,
 * as far as a verdict hangs on them, and judges again only the rules that these decide. The verdicts are those of
 * `evaluate` without a stage.
 */
export class ChangingJudge {
  readonly rules: readonly CompiledRule[];
  private readonly staged: StagedRules;
  /** By path: slots of the facts that may rest on it, by whatever way. */
  private readonly reached = new Map<string, number[]>();
  /** By slot: rules that it decides. */
  private readonly decided: readonly (readonly number[])[];
  private readonly codes: Uint8Array;
  private readonly ground: BuildGround;
  private build: Build;
  private filled: Values;
  private differing: ReadonlyMap<string, unknown>;
  private judged = 0;

  /** Judges the build as it is. @param rules from `compileRules` */
  constructor(build: Build, rules: readonly CompiledRule[]) {
    this.rules = rules;
    this.build = build;
    this.filled = withDefaults(build);
    this.differing = differingFields(this.filled);
    this.staged = new StagedRules(rules, (name) => costOf(quantities, name));
    const { slots } = this.staged.compiled;
    for (const [slot, name] of slots.names.entries())
      for (const path of everyRoot(quantities, name))
        this.reached.set(path, [...(this.reached.get(path) ?? []), slot]);
    const decided = slots.names.map((): number[] => []);
    for (const [rule, own] of this.staged.slots.entries()) for (const slot of own) decided[slot]!.push(rule);
    this.decided = decided;
    this.codes = new Uint8Array(rules.length);
    this.ground = new BuildGround(this.staged.compiled);
    this.ground.load(this.filled);
    for (const rule of rules.keys()) this.judge(rule);
  }

  get counts(): ChangingJudgeCounts {
    return { derived: this.ground.derived, judged: this.judged };
  }

  /** What every rule says, as codes of `verdictCodes` in the order of the rules. Not to be changed. */
  get verdicts(): Uint8Array {
    return this.codes;
  }

  word(rule: number): VerdictWord {
    return verdictCodes[this.codes[rule]!]!;
  }

  /**
   * Changes one entry of the build, with every default that follows it.
   * @param value undefined takes the entry out
   * @returns indices of the rules that say something else now
   */
  set(path: string, value: FieldValue | undefined): readonly number[] {
    const values = new Map(this.build.values);
    if (value === undefined) values.delete(path);
    else values.set(path, value);
    this.build = { ...this.build, values };
    const before = this.filled;
    this.filled = withDefaults(this.build);
    const paths = new Set([...before.keys(), ...this.filled.keys()]);
    const changed = [...paths].filter((one) => before.get(one) !== this.filled.get(one));
    const [had, has] = [this.differing.size, differingFields(this.filled)];
    this.differing = has;
    const slots = new Set(changed.flatMap((one) => this.reached.get(one) ?? []));
    this.ground.load(this.filled, slots);
    const rules = new Set([...slots].flatMap((slot) => this.decided[slot]!));
    // What readings by place decide, and at which places, hangs on more than the facts of a rule.
    if (had + has.size > 0) for (const rule of this.rules.keys()) if (this.isAtPlaces(rule)) rules.add(rule);
    return [...rules].sort((a, b) => a - b).filter((rule) => this.judge(rule));
  }

  /** @returns whether the verdict is another than before */
  private judge(rule: number): boolean {
    this.judged += 1;
    const code = this.staged.code(rule, this.ground, this.isAtPlaces(rule));
    const isOther = this.codes[rule] !== code;
    this.codes[rule] = code;
    return isOther;
  }

  private isAtPlaces(rule: number): boolean {
    if (this.differing.size === 0) return false;
    return [...decidingFacts(this.rules[rule]!)].some((name) =>
      [...everyRoot(quantities, name)].some((path) => this.differing.has(path)),
    );
  }
}
