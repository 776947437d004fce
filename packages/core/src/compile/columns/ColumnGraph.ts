import type { Operator } from "@trialfit/rules";
import type { CompiledLimit, CompiledRule, ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import { isNumeric } from "../../judge/compare.ts";
import type { FactColumns } from "../FactColumns.ts";
import { wordOutcomes } from "../RuleCompiler.ts";
import { casesByWord } from "./casesByWord.ts";
import { allKernel, anyKernel } from "./groupKernels.ts";
import {
  type EndColumns,
  type Kernel,
  numberKernels,
  type Outcomes,
  pairKernels,
  wordKernel,
} from "./kernels.ts";
import { limitByWord, limitKernel } from "./limitKernel.ts";

/** Something that is worked out once for a block, however many rules ask for it. */
interface Node<T> {
  readonly key: string;
  readonly column: T;
}

type Order = keyof typeof numberKernels;
const isOrder = (operator: Operator): operator is Order => isNumeric(operator);

/** Conditions and limits of some rules, each different one once, in an order in which they can be worked out. */
export class ColumnGraph {
  readonly kernels: Kernel[] = [];
  private readonly conditions = new Map<string, Node<Outcomes>>();
  private readonly limits = new Map<string, Node<EndColumns>>();
  private readonly facts: FactColumns;

  constructor(facts: FactColumns) {
    this.facts = facts;
  }

  /** Room for what a condition comes to, or for verdicts. */
  outcomes(): Outcomes {
    const bytes = new Uint8Array(this.facts.room);
    return { bytes, fours: new Int32Array(bytes.buffer) };
  }

  /** What a condition of a rule comes to. */
  condition(node: ConditionNode, rule: CompiledRule): Outcomes {
    return this.nodeOf(node, rule).column;
  }

  private nodeOf(node: ConditionNode, rule: CompiledRule): Node<Outcomes> {
    if (node.kind === "leaf") return this.leaf(node, rule);
    const children = node.children.map((child) => this.nodeOf(child, rule));
    if (children.length === 1) return children[0]!;
    const key = `${node.kind}(${children.map((child) => child.key).join()})`;
    const columns = children.map(({ column }) => column);
    return this.once(key, (into) =>
      node.kind === "all" ? allKernel(columns, into) : anyKernel(columns, into),
    );
  }

  private once(key: string, make: (into: Outcomes) => Kernel): Node<Outcomes> {
    let node = this.conditions.get(key);
    if (node === undefined) {
      // Numbered: keys of groups would grow with the depth of the tree.
      node = { key: `#${this.conditions.size}`, column: this.outcomes() };
      this.kernels.push(make(node.column));
      this.conditions.set(key, node);
    }
    return node;
  }

  private endsOf(slot: number): EndColumns {
    const { low, high, lack, room } = this.facts;
    const [from, to] = [slot * room, (slot + 1) * room];
    return { low: low.subarray(from, to), high: high.subarray(from, to), lack: lack.subarray(from, to) };
  }

  private leaf(leaf: Leaf, rule: CompiledRule): Node<Outcomes> {
    const { fact, operator, value } = leaf;
    const slot = this.facts.slots.slotOf(fact);
    if (value.kind === "words" || !isOrder(operator)) return this.wordLeaf(leaf, slot);
    if (value.kind === "number") return this.numberLeaf(operator, slot, value.value);
    const limit = rule.limits.find((one) => one.fact === value.fact);
    if (limit?.cases.length === 0) return this.numberLeaf(operator, slot, limit.value);
    const other = limit === undefined ? undefined : this.limitOf(limit, rule);
    const against = other?.column ?? this.endsOf(this.facts.slots.slotOf(value.fact));
    const name = other?.key ?? this.facts.slots.slotOf(value.fact);
    return this.once(`${operator} ${slot} ${name}`, (into) =>
      pairKernels[operator](this.endsOf(slot), into, against),
    );
  }

  private numberLeaf(operator: Order, slot: number, number: number): Node<Outcomes> {
    return this.once(`${operator} ${slot} number ${number}`, (into) =>
      numberKernels[operator](this.endsOf(slot), into, number),
    );
  }

  private wordLeaf(leaf: Leaf, slot: number): Node<Outcomes> {
    const outcomes = wordOutcomes(leaf, this.facts.slots);
    return this.once(`words ${slot} ${outcomes.join("")}`, (into) =>
      wordKernel(this.endsOf(slot), into, outcomes),
    );
  }

  private limitOf(limit: CompiledLimit, rule: CompiledRule): Node<EndColumns> {
    const byWord = casesByWord(limit, this.facts.slots);
    const cases = byWord === undefined ? this.casesOf(limit, rule) : [];
    const key = [
      limit.value,
      ...limit.cases.map((one) => one.value),
      ...(byWord === undefined
        ? cases.map(({ when }) => when.key)
        : [byWord.slot, ...byWord.outcomes.map((one) => one.join(""))]),
    ].join(" ");
    let node = this.limits.get(key);
    if (node === undefined) {
      const { room } = this.facts;
      const column = {
        low: new Float64Array(room),
        high: new Float64Array(room),
        lack: new Uint8Array(room),
      };
      node = { key: `limit #${this.limits.size}`, column };
      const values = limit.cases.map((one) => one.value);
      const columns = cases.map(({ when }, index) => ({ when: when.column, value: values[index]! }));
      this.kernels.push(
        byWord === undefined
          ? limitKernel(columns, limit.value, column)
          : limitByWord(this.endsOf(byWord.slot), byWord.outcomes, values, limit.value, column),
      );
      this.limits.set(key, node);
    }
    return node;
  }

  private casesOf(limit: CompiledLimit, rule: CompiledRule) {
    return limit.cases.map((one) => ({ when: this.nodeOf(one.when, rule) }));
  }
}
