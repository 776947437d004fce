import type { Comparison, Condition, LimitFile, RuleFile } from "@trialfit/rules";
import { confirmationPath } from "../read/confirmations.ts";
import { nearestWord } from "../read/nearestWord.ts";
import { DimensionError, parseDimension } from "../units/parseDimension.ts";
import {
  type CompiledLimit,
  type CompiledRule,
  type ConditionNode,
  type Leaf,
  leavesOf,
  type Reference,
} from "./CompiledRule.ts";
import { isNumeric, negated } from "./compare.ts";
import { CONFIRMED, factNames, factType } from "./factCatalog.ts";
import { templateNames } from "./templateNames.ts";

/** A rule that cannot be used, with everything that is wrong with it. */
export class RuleError extends Error {
  readonly rule: string;
  readonly problems: readonly string[];
  constructor(rule: string, problems: readonly string[]) {
    super(problems.map((problem) => `${rule}: ${problem}`).join("\n"));
    this.name = "RuleError";
    this.rule = rule;
    this.problems = problems;
  }
}

const LIMIT = /^limit\.([a-z][A-Za-z]*)$/;

class Compiler {
  readonly problems: string[] = [];
  private readonly file: RuleFile;
  /** Unit of each limit, from the fact that it is compared with. */
  readonly limitUnits = new Map<string, string>();
  asksToConfirm = false;

  constructor(file: RuleFile) {
    this.file = file;
  }

  condition(condition: Condition, negate = false): ConditionNode {
    if ("not" in condition) return this.condition(condition.not, !negate);
    if ("all" in condition) return this.group(condition.all, negate ? "any" : "all", negate);
    if ("any" in condition) return this.group(condition.any, negate ? "all" : "any", negate);
    return this.leaf(condition, negate);
  }

  private group(children: readonly Condition[], kind: "all" | "any", negate: boolean): ConditionNode {
    return { kind, children: children.map((child) => this.condition(child, negate)) };
  }

  private leaf(comparison: Comparison, negate: boolean): Leaf {
    const operator = negate ? negated[comparison.operator] : comparison.operator;
    const type = factType(comparison.fact);
    if (type === undefined) this.unknownFact(comparison.fact);
    else if (type.kind === "number" && type.nominalOnly === true) {
      this.problems.push(`"${comparison.fact}" is known at the nominal values only and cannot be judged`);
    } else if (isNumeric(operator) !== (type.kind === "number")) {
      this.problems.push(`"${comparison.fact}" is a ${type.kind}: ${comparison.operator} cannot compare it`);
    }
    return { kind: "leaf", fact: this.factOf(comparison.fact), operator, value: this.reference(comparison) };
  }

  /** What a person saw is a fact of this rule alone. */
  private factOf(name: string): string {
    if (name !== CONFIRMED) return name;
    if (this.file.confirm === undefined)
      this.problems.push(`it asks for "${CONFIRMED}" but has no "confirm" that says what to look at`);
    this.asksToConfirm = true;
    return confirmationPath(this.file.id);
  }

  private reference({ fact, value }: Comparison): Reference {
    const type = factType(fact);
    if (typeof value === "object" && !Array.isArray(value)) {
      const limit = LIMIT.exec(value.fact)?.[1];
      if (limit === undefined) {
        if (factType(value.fact) === undefined) this.unknownFact(value.fact);
      } else if (this.file.limits?.[limit] === undefined) {
        this.problems.push(`"${value.fact}" is not among its limits`);
      } else if (type?.kind === "number") this.limitUnits.set(limit, type.unit);
      return { kind: "fact", fact: value.fact };
    }
    if (type?.kind === "number") {
      const text = String(value);
      return { kind: "number", value: this.number(text, type.unit, fact), text };
    }
    const words = Array.isArray(value) ? value : [value];
    for (const word of words) {
      if (type !== undefined && !type.options.includes(word)) {
        this.problems.push(`"${fact}" is never "${word}": it is one of ${type.options.join(", ")}`);
      }
    }
    return { kind: "words", words };
  }

  number(text: string, unit: string, where: string): number {
    try {
      return parseDimension(text, { unit }).nominal;
    } catch (error) {
      if (!(error instanceof DimensionError)) throw error;
      this.problems.push(`${where}: found "${text}" (${error.message}); expected ${error.expected}`);
      return Number.NaN;
    }
  }

  unknownFact(name: string): void {
    const near = nearestWord(name, factNames());
    this.problems.push(
      `no field or quantity is called "${name}"${near === undefined ? "" : `; did you mean "${near}"?`}`,
    );
  }

  limit(name: string, limit: LimitFile): CompiledLimit {
    const unit = this.limitUnits.get(name);
    if (unit === undefined) this.problems.push(`limit.${name} is never compared with anything`);
    const read = (text: string) => this.number(text, unit ?? "1", `limit.${name}`);
    const value = read(limit.value);
    const [least, most] = limit.range.map(read) as [number, number];
    if (!(least <= most)) this.problems.push(`limit.${name}: its range runs backwards`);
    const cases = (limit.cases ?? []).map((one) => ({
      when: this.condition(one.when),
      value: read(one.value),
      text: one.value,
    }));
    for (const one of [{ value, text: limit.value }, ...cases]) {
      if (one.value < least || one.value > most) {
        this.problems.push(`limit.${name}: ${one.text} lies outside its own range`);
      }
    }
    return { fact: `limit.${name}`, unit: unit ?? "1", value, cases };
  }
}

/**
 * Checks a rule file against the fields and quantities that exist, and brings it into the form that is judged:
 * no negations, numbers in SI.
 * @throws RuleError with every problem.
 */
export function compileRule(file: RuleFile): CompiledRule {
  const compiler = new Compiler(file);
  const when = file.when === undefined ? undefined : compiler.condition(file.when);
  const requires = compiler.condition(file.requires);
  const limits = Object.entries(file.limits ?? {}).map(([name, limit]) => compiler.limit(name, limit));
  if (file.confirm !== undefined && !compiler.asksToConfirm)
    compiler.problems.push(`it has "confirm", but no condition asks for "${CONFIRMED}"`);
  const texts = [file.otherwise.do, file.because].flatMap(templateNames);
  for (const name of texts) {
    if (
      LIMIT.test(name)
        ? file.limits?.[name.slice("limit.".length)] === undefined
        : factType(name) === undefined
    ) {
      compiler.unknownFact(name);
    }
  }
  if (compiler.problems.length > 0) throw new RuleError(file.id, [...new Set(compiler.problems)]);
  const trees = [when, requires, ...limits.flatMap((limit) => limit.cases.map((one) => one.when))];
  const named = trees
    .flatMap(leavesOf)
    .flatMap((leaf) => [leaf.fact, ...(leaf.value.kind === "fact" ? [leaf.value.fact] : [])]);
  const facts = [...new Set([...named, ...texts])].filter((name) => !LIMIT.test(name)).sort();
  return { file, when, requires, limits, facts };
}
