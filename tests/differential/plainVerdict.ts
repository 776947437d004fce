import type { Condition, RuleFile } from "@trialfit/rules";
import type { Seen } from "./randomRules.ts";

/** True, false, or not settled: Kleene's strong three-valued logic (S. C. Kleene, Introduction to Metamathematics). */
type Truth = "T" | "F" | "U";

/** A condition read off the rule file, its comparisons settled or waiting for something. */
type Read =
  | { readonly kind: "leaf"; readonly truth: Truth; readonly waits: readonly string[] }
  | { readonly kind: "not"; readonly of: Read }
  | { readonly kind: "all" | "any"; readonly of: readonly Read[] };

interface Interval {
  readonly low: number;
  readonly high: number;
  /** What is missing behind it. */
  readonly waits: readonly string[];
}
type Side = Interval | { readonly missing: string };
type Sight = ReadonlyMap<string, Seen>;

const isMissing = (side: Side): side is { readonly missing: string } => "missing" in side;

function sideOf(name: string, sight: Sight): Side {
  const seen = sight.get(name);
  return seen?.kind === "band" ? { low: seen.low, high: seen.high, waits: [] } : { missing: name };
}

function order(operator: string, a: Interval, b: Interval): Truth {
  if (operator === "lessThan") return a.high < b.low ? "T" : a.low >= b.high ? "F" : "U";
  if (operator === "lessThanInclusive") return a.high <= b.low ? "T" : a.low > b.high ? "F" : "U";
  if (operator === "greaterThan") return a.low > b.high ? "T" : a.high <= b.low ? "F" : "U";
  if (operator === "greaterThanInclusive") return a.low >= b.high ? "T" : a.high < b.low ? "F" : "U";
  throw new Error(`no such order: ${operator}`);
}

const millimetres = (text: string) => Number(text.replace(" mm", ""));

class Reader {
  private readonly rule: RuleFile;
  private readonly sight: Sight;
  constructor(rule: RuleFile, sight: Sight) {
    this.rule = rule;
    this.sight = sight;
  }

  read(condition: Condition): Read {
    if ("not" in condition) return { kind: "not", of: this.read(condition.not) };
    if ("all" in condition) return { kind: "all", of: condition.all.map((one) => this.read(one)) };
    if ("any" in condition) return { kind: "any", of: condition.any.map((one) => this.read(one)) };
    const { fact, operator, value } = condition;
    if (/^(equal|notEqual|in|notIn)$/.test(operator))
      return this.word(fact, operator, value as string | string[]);
    const left = sideOf(fact, this.sight);
    const right: Side =
      typeof value === "string"
        ? { low: millimetres(value), high: millimetres(value), waits: [] }
        : this.reference((value as { fact: string }).fact);
    if (isMissing(left) || isMissing(right)) {
      const waits = [left, right].flatMap((side) => (isMissing(side) ? [side.missing] : side.waits));
      return { kind: "leaf", truth: "U", waits };
    }
    const truth = order(operator, left, right);
    return { kind: "leaf", truth, waits: truth === "U" ? [...left.waits, ...right.waits] : [] };
  }

  private word(fact: string, operator: string, value: string | string[]): Read {
    const seen = this.sight.get(fact);
    if (seen?.kind !== "word") return { kind: "leaf", truth: "U", waits: [fact] };
    const among = (Array.isArray(value) ? value : [value]).includes(seen.word);
    return { kind: "leaf", truth: among === /^(equal|in)$/.test(operator) ? "T" : "F", waits: [] };
  }

  /** Another fact, or the first limit that surely stands with all that may stand before it. */
  private reference(name: string): Side {
    const limit = this.rule.limits?.[name.replace("limit.", "")];
    if (!name.startsWith("limit.") || limit === undefined) return sideOf(name, this.sight);
    const values: number[] = [];
    const waits: string[] = [];
    for (const one of limit.cases ?? []) {
      const read = this.read(one.when);
      const truth = truthOf(read);
      if (truth === "F") continue;
      values.push(millimetres(one.value));
      if (truth === "T") return { low: Math.min(...values), high: Math.max(...values), waits };
      waits.push(...pending(read).flatMap((leaf) => leaf.waits));
    }
    values.push(millimetres(limit.value));
    return { low: Math.min(...values), high: Math.max(...values), waits };
  }
}

type Leaf = Extract<Read, { kind: "leaf" }>;

/** The truth of a condition; `given` overrules single leaves. */
function truthOf(read: Read, given: ReadonlyMap<Leaf, Truth> = new Map()): Truth {
  if (read.kind === "leaf") return given.get(read) ?? read.truth;
  if (read.kind === "not") return { T: "F", F: "T", U: "U" }[truthOf(read.of, given)] as Truth;
  const truths = read.of.map((one) => truthOf(one, given));
  const [ruling, other]: [Truth, Truth] = read.kind === "all" ? ["F", "T"] : ["T", "F"];
  return truths.includes(ruling) ? ruling : truths.includes("U") ? "U" : other;
}

function leaves(read: Read): readonly Leaf[] {
  if (read.kind === "leaf") return [read];
  return read.kind === "not" ? leaves(read.of) : read.of.flatMap(leaves);
}

/** Leaves that are not settled and can still turn the condition: tried both ways beside every truth of the others. */
function pending(read: Read): readonly Leaf[] {
  const open = leaves(read).filter((leaf) => leaf.truth === "U");
  if (open.length > 12) throw new Error("too many open leaves to try all of them");
  return open.filter((leaf) => {
    const others = open.filter((one) => one !== leaf);
    for (let bits = 0; bits < 2 ** others.length; bits += 1) {
      const given = new Map<Leaf, Truth>(others.map((one, index) => [one, (bits >> index) & 1 ? "T" : "F"]));
      const [yes, no] = (["T", "F"] as const).map((truth) => truthOf(read, new Map(given).set(leaf, truth)));
      if (yes !== no) return true;
    }
    return false;
  });
}

/**
 * The verdict of a rule file read plainly, with the inputs that it waits for: written from the meaning of the words,
 * without anything of the evaluator.
 */
export function plainVerdict(
  rule: RuleFile,
  sight: Sight,
): { readonly verdict: string; readonly missing: readonly string[] } {
  const reader = new Reader(rule, sight);
  const when = rule.when === undefined ? undefined : reader.read(rule.when);
  const requires = reader.read(rule.requires);
  const relevant = when === undefined ? "T" : truthOf(when);
  const met = truthOf(requires);
  if (relevant === "F") return { verdict: "not-applicable", missing: [] };
  if (met === "T") return { verdict: "holds", missing: [] };
  if (relevant === "T" && met === "F") return { verdict: "fails", missing: [] };
  const waiting = [when, requires].flatMap((read) =>
    read === undefined || truthOf(read) !== "U" ? [] : pending(read).flatMap((leaf) => leaf.waits),
  );
  const missing = [...new Set(waiting)].sort();
  return { verdict: missing.length > 0 ? "unknown" : "open", missing };
}
