import { type CompiledRule, VerdictCode } from "trialfit";

export type Node = CompiledRule["requires"];
export type Leaf = Extract<Node, { kind: "leaf" }>;

/** One build at single values: numbers in SI and words by the name of the fact, nothing missing. */
export type PlainFacts = Readonly<Record<string, number | string>>;

/** Judges one build; the codes of its verdicts in the order of the rules. */
export type PlainJudge = (facts: PlainFacts) => Uint8Array | Promise<Uint8Array>;

export const isWord = ({ value }: Leaf) => value.kind === "words";
export const wordsOf = ({ value }: Leaf) => (value.kind === "words" ? value.words : []);
export const isContained = ({ operator }: Leaf) => operator === "equal" || operator === "in";
export const codeOf = (relevant: boolean, met: boolean) =>
  relevant ? (met ? VerdictCode.holds : VerdictCode.fails) : VerdictCode.notApplicable;

/** Signs of comparisons of size. */
export const LOGIC = {
  greaterThan: ">",
  greaterThanInclusive: ">=",
  lessThan: "<",
  lessThanInclusive: "<=",
} as const;

const renamed = new WeakMap<PlainFacts, PlainFacts>();

/** The same facts under names without a point, which these libraries take for a path: made once, not counted. */
export function underscored(facts: PlainFacts): PlainFacts {
  let known = renamed.get(facts);
  if (known === undefined) {
    known = Object.fromEntries(
      Object.entries(facts).map(([name, value]) => [name.replaceAll(/[^A-Za-z0-9]/g, "_"), value]),
    );
    renamed.set(facts, known);
  }
  return known;
}
