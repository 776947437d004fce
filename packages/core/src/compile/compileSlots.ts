import type { CompiledLimit, CompiledRule, ConditionNode, Leaf } from "../judge/CompiledRule.ts";
import { isNumeric } from "../judge/compare.ts";
import type { Lookup } from "../judge/decide.ts";
import { all, any, type Condition, codeFor, type Ends, withNumber, withSlot, withWords } from "./closures.ts";
import { FactColumns } from "./FactColumns.ts";
import { FactSlots } from "./FactSlots.ts";
import { LACKING, Outcome } from "./Outcome.ts";

/** Says of the facts in the slots what a rule says of a build: a code of {@link verdictCodes}. */
export type JudgeSlots = () => number;

/** Rules as functions over the slots of one build. */
export interface SlotRules {
  readonly slots: FactSlots;
  /** The facts that are judged; put others in and judge again. */
  readonly facts: FactColumns;
  /** One for each rule, in their order. */
  readonly judges: readonly JudgeSlots[];
  /** Verdicts that were given so far. */
  readonly judged: number;
  /**
   * The verdict of every rule, as codes, in the order of the rules.
   * @param into where they go; a new list where it is left out
   */
  judgeAll(into?: Uint8Array): Uint8Array;
  /** The same after all facts were put in. */
  judge(lookup: Lookup, into?: Uint8Array): Uint8Array;
}

/** Which words, by their numbers, satisfy a comparison. */
export function wordsAmong(leaf: Leaf, slots: FactSlots): Uint8Array {
  const named = leaf.value.kind === "words" ? leaf.value.words.map((word) => slots.wordNumber(word)) : [];
  const contained = leaf.operator === "equal" || leaf.operator === "in";
  const among = new Uint8Array(slots.wordCount).fill(contained ? 0 : 1);
  for (const number of named) among[number] = contained ? 1 : 0;
  return among;
}

/** Puts the value of a limit where its comparisons read it. */
type PlaceLimit = () => void;

function limitPlacer(limit: CompiledLimit, at: number, ends: Ends, cases: readonly Condition[]): PlaceLimit {
  const { low, high, lack } = ends;
  const values = limit.cases.map((one) => one.value);
  return () => {
    let [least, most, lacks] = [Infinity, -Infinity, 0];
    let last = limit.value;
    let settled = false;
    for (let index = 0; index < cases.length && !settled; index += 1) {
      const outcome = cases[index]!();
      if (outcome === Outcome.no) continue;
      last = values[index]!;
      least = Math.min(least, last);
      most = Math.max(most, last);
      lacks |= outcome & LACKING;
      settled = outcome === Outcome.yes;
    }
    low[at] = settled ? least : Math.min(least, limit.value);
    high[at] = settled ? most : Math.max(most, limit.value);
    lack[at] = lacks;
  };
}

/** Makes functions of the conditions of one rule. */
class RuleCompiler {
  private readonly facts: FactColumns;
  /** Limits whose value depends on the build. */
  private readonly cased: readonly CompiledLimit[];
  private readonly fixed: ReadonlyMap<string, number>;
  private readonly ends: Ends;
  readonly placers: readonly PlaceLimit[];

  constructor(rule: CompiledRule, facts: FactColumns) {
    this.facts = facts;
    this.cased = rule.limits.filter(({ cases }) => cases.length > 0);
    this.fixed = new Map(
      rule.limits.filter(({ cases }) => cases.length === 0).map(({ fact, value }) => [fact, value]),
    );
    const count = this.cased.length;
    this.ends = { low: new Float64Array(count), high: new Float64Array(count), lack: new Uint8Array(count) };
    this.placers = this.cased.map((limit, at) =>
      limitPlacer(
        limit,
        at,
        this.ends,
        limit.cases.map((one) => this.condition(one.when)),
      ),
    );
  }

  condition(node: ConditionNode): Condition {
    if (node.kind === "leaf") return this.leaf(node);
    const children = node.children.map((child) => this.condition(child));
    return node.kind === "all" ? all(children) : any(children);
  }

  private leaf(leaf: Leaf): Condition {
    const { operator, value } = leaf;
    const slot = this.facts.slots.slotOf(leaf.fact);
    if (value.kind === "words" || !isNumeric(operator))
      return withWords(this.facts, slot, wordsAmong(leaf, this.facts.slots));
    const order = operator as keyof typeof withNumber;
    const number = value.kind === "number" ? value.value : this.fixed.get(value.fact);
    if (number !== undefined) return withNumber[order](this.facts, slot, number);
    const name = value.kind === "fact" ? value.fact : "";
    const limit = this.cased.findIndex(({ fact }) => fact === name);
    return limit < 0
      ? withSlot[order](this.facts, slot, this.facts, this.facts.slots.slotOf(name))
      : withSlot[order](this.facts, slot, this.ends, limit);
  }
}

function judgeOf(rule: CompiledRule, facts: FactColumns): JudgeSlots {
  const compiler = new RuleCompiler(rule, facts);
  const requires = compiler.condition(rule.requires);
  const when = rule.when === undefined ? undefined : compiler.condition(rule.when);
  const { placers } = compiler;
  const place = () => {
    for (let index = 0; index < placers.length; index += 1) placers[index]!();
  };
  if (when === undefined && placers.length === 0) return () => codeFor(Outcome.yes, requires());
  return () => {
    place();
    const relevant = when === undefined ? Outcome.yes : when();
    return relevant === Outcome.no ? codeFor(relevant, Outcome.no) : codeFor(relevant, requires());
  };
}

/**
 * Compiles rules once to functions over numbered facts: the verdicts are those of `judgeAll`, without their
 * explanations and some hundred times sooner. A differential test holds them to json-rules-engine.
 */
export function compileSlots(rules: readonly CompiledRule[]): SlotRules {
  const slots = new FactSlots(rules);
  const facts = new FactColumns(slots);
  const judges = rules.map((rule) => judgeOf(rule, facts));
  let judged = 0;
  const judgeAll = (into: Uint8Array = new Uint8Array(judges.length)) => {
    for (let index = 0; index < judges.length; index += 1) into[index] = judges[index]!();
    judged += judges.length;
    return into;
  };
  return {
    slots,
    facts,
    judges,
    get judged() {
      return judged;
    },
    judgeAll,
    judge: (lookup, into) => {
      facts.fill(lookup);
      return judgeAll(into);
    },
  };
}
