import { type CompiledRule, leavesOf } from "../judge/CompiledRule.ts";
import { decidingFacts } from "../judge/decidingFacts.ts";

/** The number of a word that is missing. */
export const MISSING_WORD = 0;
/** The number of every word that no rule names. */
export const OTHER_WORD = 1;

/** The facts that decide some rules, each with a number of its own, and the words that these rules name. */
export class FactSlots {
  /** By slot. */
  readonly names: readonly string[];
  /** By slot: whether the fact is a word. */
  readonly isWord: readonly boolean[];
  private readonly slots: ReadonlyMap<string, number>;
  private readonly words: ReadonlyMap<string, number>;

  constructor(rules: readonly CompiledRule[]) {
    this.names = [...new Set(rules.flatMap((rule) => [...decidingFacts(rule)]))].sort();
    this.slots = new Map(this.names.map((name, slot) => [name, slot]));
    const conditions = rules.flatMap(({ when, requires, limits }) => [
      when,
      requires,
      ...limits.flatMap((limit) => limit.cases.map((one) => one.when)),
    ]);
    const leaves = conditions.flatMap(leavesOf).filter(({ value }) => value.kind === "words");
    const wordFacts = new Set(leaves.map(({ fact }) => fact));
    this.isWord = this.names.map((name) => wordFacts.has(name));
    const named = leaves.flatMap(({ value }) => (value.kind === "words" ? value.words : []));
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

  /** The number of a word: from 2, or {@link OTHER_WORD} for one that no rule names. */
  wordNumber(word: string): number {
    return this.words.get(word) ?? OTHER_WORD;
  }

  /** How many numbers of words there are, those for a missing one and for any other included. */
  get wordCount(): number {
    return OTHER_WORD + 1 + this.words.size;
  }
}
