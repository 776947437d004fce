import { type CompiledRule, leavesOf } from "trialfit";
import { type FactSlots, MISSING_WORD } from "../../packages/core/src/compile/FactSlots.ts";
import { wordOutcomes } from "../../packages/core/src/compile/RuleCompiler.ts";

type Node = CompiledRule["requires"];
type Leaf = Extract<Node, { kind: "leaf" }>;

const SIGNS = {
  greaterThan: ">",
  greaterThanInclusive: ">=",
  lessThan: "<",
  lessThanInclusive: "<=",
} as const;

/**
 * Writes rules as straight-line code, as one would by hand for speed: comparisons with their numbers in place. Only for
 * comparison: it is written to a file when the benchmark runs, and never shipped.
 */
class Writer {
  private readonly slots: FactSlots;

  constructor(slots: FactSlots) {
    this.slots = slots;
  }

  /** True or false at single values, tied by `&&` and `||`. */
  plain(node: Node, rule: CompiledRule): string {
    if (node.kind !== "leaf") {
      const children = node.children.map((child) => this.plain(child, rule));
      return `(${children.join(node.kind === "all" ? " && " : " || ")})`;
    }
    const slot = this.slots.slotOf(node.fact);
    const { value, operator } = node;
    if (value.kind === "words") {
      const contained = operator === "equal" || operator === "in";
      const among = value.words.map(
        (word) => `l[${slot}] ${contained ? "===" : "!=="} ${this.slots.wordNumber(word)}`,
      );
      return `(${among.join(contained ? " || " : " && ")})`;
    }
    return `l[${slot}] ${SIGNS[operator as keyof typeof SIGNS]} ${this.against(node, rule, "l", "a")}`;
  }

  /** The bits of an outcome: 3 surely, 2 possibly, 6 for want of something, 0 not. */
  sided(node: Node, rule: CompiledRule): string {
    if (node.kind !== "leaf") {
      const children = node.children.map((child) => this.sided(child, rule));
      return children.reduce((all, one) => `${node.kind === "all" ? "A" : "O"}(${all}, ${one})`);
    }
    const slot = this.slots.slotOf(node.fact);
    if (node.value.kind === "words") {
      const outcomes = wordOutcomes(node, this.slots);
      const usual = outcomes.at(-1)! === 0 || outcomes.at(1)! === 0 ? 0 : 3;
      const named = [...outcomes.keys()].filter((word) => outcomes[word] !== usual);
      return `(${named.map((word) => `l[${slot}] === ${word} ? ${outcomes[word]} : `).join("")}${usual})`;
    }
    const sign = SIGNS[node.operator as keyof typeof SIGNS];
    const [sure, may] = sign.startsWith(">") ? ["l", "h"] : ["h", "l"];
    const [most, least] = sign.startsWith(">") ? ["h", "l"] : ["l", "h"];
    const surely = `${sure}[${slot}] ${sign} ${this.against(node, rule, most!, most === "h" ? "b" : "a")}`;
    const possibly = `${may}[${slot}] ${sign} ${this.against(node, rule, least!, least === "h" ? "b" : "a")}`;
    return `(${surely} ? 3 : ${possibly} ? 2 | k[${slot}]${this.lack(node, rule)} : 0)`;
  }

  private lack({ value }: Leaf, rule: CompiledRule): string {
    if (value.kind !== "fact") return "";
    const limit = rule.limits.findIndex(({ fact }) => fact === value.fact);
    if (limit < 0) return ` | k[${this.slots.slotOf(value.fact)}]`;
    return rule.limits[limit]!.cases.length === 0 ? "" : ` | c${limit}`;
  }

  private against({ value }: Leaf, rule: CompiledRule, column: string, limitEnd: string): string {
    if (value.kind === "number") return String(value.value);
    const name = value.kind === "fact" ? value.fact : "";
    const index = rule.limits.findIndex(({ fact }) => fact === name);
    const limit = rule.limits[index];
    if (limit === undefined) return `${column}[${this.slots.slotOf(name)}]`;
    return limit.cases.length === 0 ? String(limit.value) : `${limitEnd}${index}`;
  }

  plainLimits(rule: CompiledRule): string {
    const lines = rule.limits.map((limit, index) => {
      const { cases, value } = limit;
      const byWord = cases.length === 0 ? undefined : this.byWord(limit, index);
      if (byWord !== undefined) return byWord;
      const chain = cases.map((one) => `${this.plain(one.when, rule)} ? ${one.value} : `);
      return cases.length === 0 ? "" : `const a${index} = ${chain.join("")}${value};`;
    });
    return lines.join("\n");
  }

  /** Limits whose cases all ask for words of one fact are looked up by the word. */
  readonly tables: string[] = [];

  private byWord({ cases, value }: CompiledRule["limits"][number], index: number): string | undefined {
    const leaves = cases.flatMap(({ when }) =>
      when.kind === "leaf" && when.value.kind === "words" ? [when] : [],
    );
    const [first] = leaves;
    if (first === undefined || leaves.length < cases.length) return undefined;
    if (leaves.some(({ fact }) => fact !== first.fact)) return undefined;
    const outcomes = leaves.map((leaf) => wordOutcomes(leaf, this.slots));
    const ends = Array.from({ length: this.slots.wordCount }, (_, word) => {
      const found: number[] = [];
      for (const [at, outcome] of outcomes.entries()) {
        if (outcome[word] !== 0) found.push(cases[at]!.value);
        if (outcome[word] === 3) return [Math.min(...found), Math.max(...found), 0];
      }
      return [Math.min(...found, value), Math.max(...found, value), word === MISSING_WORD ? 4 : 0];
    });
    const at = this.tables.length;
    for (const column of [0, 1, 2]) {
      const type = column === 2 ? "Uint8Array" : "Float64Array";
      this.tables.push(`const t${at + column} = ${type}.of(${ends.map((end) => end[column]).join()});`);
    }
    const word = `l[${this.slots.slotOf(first.fact)}]`;
    return `const a${index} = t${at}[${word}], b${index} = t${at + 1}[${word}], c${index} = t${at + 2}[${word}];`;
  }

  sidedLimits(rule: CompiledRule): string {
    const lines = rule.limits.map((limit, index) => {
      const { cases, value } = limit;
      if (cases.length === 0) return "";
      const byWord = this.byWord(limit, index);
      if (byWord !== undefined) return byWord;
      const [a, b, c, s] = ["a", "b", "c", "s"].map((name) => `${name}${index}`);
      const widen = (to: number) => `if (${a} > ${to}) ${a} = ${to}; if (${b} < ${to}) ${b} = ${to};`;
      const steps = cases.map(
        (one) => `if (${s} !== 3) { ${s} = ${this.sided(one.when, rule)};
          if (${s} !== 0) { ${widen(one.value)} ${c} |= ${s} & 4; } }`,
      );
      return `let ${a} = Infinity, ${b} = -Infinity, ${c} = 0, ${s} = 0;
        ${steps.join("\n")}
        if (${s} !== 3) { ${widen(value)} }`;
    });
    return lines.join("\n");
  }
}

const readsLimit = (node: Node | undefined) =>
  leavesOf(node).some(({ value }) => value.kind === "fact" && value.fact.startsWith("limit."));

/**
 * The text of a module whose `judge(l, h, k, into)` judges one build by straight-line code.
 * @param bands two-sided over bands and missing facts; otherwise true or false at single values
 */
export function straightLine(rules: readonly CompiledRule[], slots: FactSlots, bands: boolean): string {
  const writer = new Writer(slots);
  const functions = rules.map((rule, index) => {
    const { when, requires } = rule;
    const limits = bands ? writer.sidedLimits(rule) : writer.plainLimits(rule);
    const [before, after] = readsLimit(when) ? [limits, ""] : ["", limits];
    if (!bands) {
      const relevant = when === undefined ? "" : `if (!(${writer.plain(when, rule)})) return 0;`;
      return `function r${index}(l) { ${before} ${relevant} ${after} return ${writer.plain(requires, rule)} ? 1 : 4; }`;
    }
    const relevant =
      when === undefined ? "const w = 3;" : `const w = ${writer.sided(when, rule)}; if (w === 0) return 0;`;
    return `function r${index}(l, h, k) { ${before} ${relevant} ${after} const r = ${writer.sided(requires, rule)};
      return r === 3 ? 1 : w === 3 && r === 0 ? 4 : ((w | r) & 4) !== 0 ? 3 : 2; }`;
  });
  const helpers = `const A = (x, y) => { const b = x & y; return (b & 1) !== 0 ? 3 : (b & 2) !== 0 ? 2 | ((x | y) & 4) : 0; };
    const O = (x, y) => ((x | y) & 1) !== 0 ? 3 : x | y;`;
  const call = bands ? "(l, h, k)" : "(l)";
  const calls = rules.map((_, index) => `into[${index}] = r${index}${call};`);
  return `${helpers}\n${writer.tables.join("\n")}\n${functions.join("\n")}\nexport function judge(l, h, k, into) {\n${calls.join("\n")}\n}\n`;
}
