import {
  type CompiledLimit,
  type CompiledRule,
  type ConditionNode,
  type Leaf,
  leavesOf,
} from "../judge/CompiledRule.ts";
import { isNumeric } from "../judge/compare.ts";
import { all, any, type Condition, type Ends, withNumber, withSlot, withWords } from "./closures.ts";
import type { FactColumns } from "./FactColumns.ts";
import { type FactSlots, MISSING_WORD } from "./FactSlots.ts";
import { greatestOf, leastOf, type Margin, marginToNumber, marginToSlot, wordMargin } from "./margins.ts";
import { LACKING, Outcome } from "./Outcome.ts";

/** What a comparison of a word comes to, by the number of the word. */
export function wordOutcomes(leaf: Leaf, slots: FactSlots): Uint8Array {
  const named = leaf.value.kind === "words" ? leaf.value.words.map((word) => slots.wordNumber(word)) : [];
  const contained = leaf.operator === "equal" || leaf.operator === "in";
  const outcomes = new Uint8Array(slots.wordCount).fill(contained ? Outcome.no : Outcome.yes);
  for (const number of named) outcomes[number] = contained ? Outcome.yes : Outcome.no;
  outcomes[MISSING_WORD] = Outcome.lacking;
  return outcomes;
}

/** Puts the value of a limit where its comparisons read it. */
type PlaceLimit = () => void;

function limitPlacer(limit: CompiledLimit, at: number, ends: Ends, cases: readonly Condition[]): PlaceLimit {
  const { low, high, lack } = ends;
  const values = limit.cases.map((one) => one.value);
  const otherwise = limit.value;
  return () => {
    let least = Infinity;
    let most = -Infinity;
    let lacks = 0;
    let settled = false;
    for (let index = 0; index < cases.length && !settled; index += 1) {
      const outcome = cases[index]!();
      if (outcome === Outcome.no) continue;
      least = Math.min(least, values[index]!);
      most = Math.max(most, values[index]!);
      lacks |= outcome & LACKING;
      settled = outcome === Outcome.yes;
    }
    low[at] = settled ? least : Math.min(least, otherwise);
    high[at] = settled ? most : Math.max(most, otherwise);
    lack[at] = lacks;
  };
}

/** What stands on the right of a comparison of numbers: a number, or a slot somewhere. */
type Against = number | { readonly at: Ends; readonly slot: number };

/** Makes functions of the conditions of one rule, over the facts of one build. */
export class RuleCompiler {
  private readonly facts: FactColumns;
  /** Limits whose value depends on the build. */
  private readonly cased: readonly CompiledLimit[];
  private readonly fixed: ReadonlyMap<string, number>;
  private readonly ends: Ends;
  private readonly placers: readonly PlaceLimit[];

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

  /** Whether a condition reads a limit that depends on the build. */
  readsCases(node: ConditionNode | undefined): boolean {
    return leavesOf(node).some(
      ({ value }) => value.kind === "fact" && this.cased.some(({ fact }) => fact === value.fact),
    );
  }

  /** Works the limits out that depend on the build; before any condition that reads them. */
  placeLimits(): void {
    for (let index = 0; index < this.placers.length; index += 1) this.placers[index]!();
  }

  /** What a condition comes to. */
  condition(node: ConditionNode): Condition {
    if (node.kind !== "leaf") {
      const children = node.children.map((child) => this.condition(child));
      return node.kind === "all" ? all(children) : any(children);
    }
    const slot = this.facts.slots.slotOf(node.fact);
    const { operator } = node;
    if (!isNumeric(operator)) return withWords(this.facts, slot, wordOutcomes(node, this.facts.slots));
    const order = operator as keyof typeof withNumber;
    const against = this.against(node);
    return typeof against === "number"
      ? withNumber[order](this.facts, slot, against)
      : withSlot[order](this.facts, slot, against.at, against.slot);
  }

  /** How far a condition is from turning at the worst end of the bands, relative. */
  margin(node: ConditionNode): Margin {
    if (node.kind !== "leaf") {
      const children = node.children.map((child) => this.margin(child));
      return node.kind === "all" ? leastOf(children) : greatestOf(children);
    }
    if (!isNumeric(node.operator)) return wordMargin(this.condition(node));
    const slot = this.facts.slots.slotOf(node.fact);
    const sign = node.operator.startsWith("greater") ? 1 : -1;
    const against = this.against(node);
    return typeof against === "number"
      ? marginToNumber(this.facts, slot, against, sign)
      : marginToSlot(this.facts, slot, against.at, against.slot, sign);
  }

  private against({ value }: Leaf): Against {
    if (value.kind === "number") return value.value;
    const name = value.kind === "fact" ? value.fact : "";
    const number = this.fixed.get(name);
    if (number !== undefined) return number;
    const limit = this.cased.findIndex(({ fact }) => fact === name);
    return limit < 0
      ? { at: this.facts, slot: this.facts.slots.slotOf(name) }
      : { at: this.ends, slot: limit };
  }
}
