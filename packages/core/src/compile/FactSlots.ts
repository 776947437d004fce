import { type CompiledRule, leavesOf } from "../judge/CompiledRule.ts";
import { conditionFacts } from "./conditionFacts.ts";

/** The number of every word that no rule names. */
export const OTHER_WORD = 0;

/** The facts that decide some rules, each with a number of its own, and the words that these rules name. */
export class FactSlots {
  /** By slot. */
  readonly names: readonly string[];
  private readonly slots: ReadonlyMap<string, number>;
  private readonly words: ReadonlyMap<string, number>;

  constructor(rules: readonly CompiledRule[]) {
    this.names = [...new Set(rules.flatMap((rule) => [...conditionFacts(rule)]))].sort();
    this.slots = new Map(this.names.map((name, slot) => [name, slot]));
    const conditions = rules.flatMap(({ when, requires, limits }) => [
      when,
      requires,
      ...limits.flatMap((limit) => limit.cases.map((one) => one.when)),
    ]);
    const named = conditions
      .flatMap(leavesOf)
      .flatMap(({ value }) => (value.kind === "words" ? value.words : []));
    this.words = new Map([...new Set(named)].sort().map((word, index) => [word, OTHER_WORD + 1 + index]));
  }

  /** How many there are. */
  get size(): number {
    return this.names.length;
  }

  /** The slot of a fact. @throws RangeError when no rule is decided by it */
  slotOf(name: string): number {
    const slot = this.slots.get(name);
    if (slot === undefined) throw new RangeError(`no rule here is decided by "${name}"`);
    return slot;
  }

  has(name: string): boolean {
    return this.slots.has(name);
  }

  /** The number of a word: from 1, or {@link OTHER_WORD} for one that no rule names. */
  wordNumber(word: string): number {
    return this.words.get(word) ?? OTHER_WORD;
  }

  /** How many numbers of words there are, {@link OTHER_WORD} included. */
  get wordCount(): number {
    return this.words.size + 1;
  }
}
