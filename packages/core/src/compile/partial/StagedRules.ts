import { quantities } from "../../derive/generated/quantities.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import { decidingFacts, relevanceFacts } from "../../judge/decidingFacts.ts";
import { groundsOf } from "../../judge/groundsOf.ts";
import { worstFirst } from "../../judge/worstPlace.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import { compileSlots, type SlotRules } from "../compileSlots.ts";
import { VerdictCode, verdictCodes } from "../verdictCodes.ts";

/** What rules are judged on, whose dear facts are worked out only when a verdict hangs on them. */
export interface StagedGround {
  /**
   * Puts a fact in its slot where that costs little.
   * @returns false where it must be derived; until then it is missing
   */
  put(slot: number): boolean;
  /** Works a fact out and puts it in its slot. */
  derive(slot: number): void;
  /** Fields of the build, defaults filled in. */
  values(): ReadonlyMap<string, FieldValue>;
}

/** Codes, the one first that stands for all places of an engine. */
const worstCodes: readonly number[] = worstFirst.map((word) => verdictCodes.indexOf(word));

/** Compiled rules that are judged on as few facts as will do. */
export class StagedRules {
  readonly compiled: SlotRules;
  /** Of each rule: slots of the facts that decide it, the cheapest first. */
  readonly slots: readonly (readonly number[])[];
  private readonly relevance: readonly ReadonlySet<number>[];
  private readonly rules: readonly CompiledRule[];
  /** The facts of one place of an engine. */
  private placed: SlotRules | undefined;

  /** @param costOf about what the fact of a slot costs, for the order in which facts are asked for */
  constructor(rules: readonly CompiledRule[], costOf: (name: string) => number) {
    this.rules = rules;
    this.compiled = compileSlots(rules);
    const { slots } = this.compiled;
    const costs = slots.names.map(costOf);
    this.slots = rules.map((rule) =>
      [...decidingFacts(rule)]
        .map((name) => slots.slotOf(name))
        .sort((a, b) => costs[a]! - costs[b]! || a - b),
    );
    this.relevance = rules.map((rule) => new Set(relevanceFacts(rule).map((name) => slots.slotOf(name))));
  }

  /**
   * What a rule says, as a code.
   * @param atPlaces whether it is judged at each place of the engine
   */
  code(rule: number, ground: StagedGround, atPlaces: boolean): number {
    if (atPlaces) {
      const codes = this.atPlaces(rule, ground, ({ judges }) => judges[rule]!());
      return worstCodes.find((code) => codes.includes(code)) ?? VerdictCode.notApplicable;
    }
    const judge = this.compiled.judges[rule]!;
    let dear: number[] | undefined;
    for (const slot of this.slots[rule]!)
      if (!ground.put(slot)) {
        dear ??= [];
        dear.push(slot);
      }
    let code = judge();
    if (dear === undefined) return code;
    // Until they are derived they are missing. By knowing more, only what is unknown can become anything, and what
    // holds can turn out not to be applicable.
    for (const slot of dear) {
      const can =
        code === VerdictCode.unknown || (code === VerdictCode.holds && this.relevance[rule]!.has(slot));
      if (!can) continue;
      ground.derive(slot);
      code = judge();
    }
    return code;
  }

  /** How far a rule is from its limits, as `PartialJudge.margin` says it. */
  margin(rule: number, ground: StagedGround, atPlaces: boolean): number {
    const code = this.code(rule, ground, atPlaces);
    if (code === VerdictCode.unknown) return Number.NaN;
    if (code === VerdictCode.notApplicable) return Infinity;
    if (atPlaces) {
      const margins = this.atPlaces(rule, ground, (placed) => placed.margins[rule]!());
      return Math.min(...margins.filter((margin) => !Number.isNaN(margin)));
    }
    for (const slot of this.slots[rule]!) if (!ground.put(slot)) ground.derive(slot);
    return this.compiled.margins[rule]!();
  }

  /** Of each place what its facts come to, one after the other in the slots. */
  private atPlaces<T>(rule: number, ground: StagedGround, come: (compiled: SlotRules) => T): readonly T[] {
    this.placed ??= compileSlots(this.rules);
    const { placed } = this;
    return groundsOf(this.rules[rule]!, ground.values(), quantities).map((lookup) => {
      for (const slot of this.slots[rule]!) placed.facts.set(slot, lookup(placed.slots.names[slot]!));
      return come(placed);
    });
  }
}
