import type { Comparison, Condition } from "@trialfit/rules";
import { confirmationPath } from "../read/confirmations.ts";
import { nearestWord } from "../read/nearestWord.ts";
import { sameDimensions, unitOf } from "../units/findUnit.ts";
import type { ConditionNode, Group, Leaf, Reference } from "./CompiledRule.ts";
import { isNumeric, negated } from "./compare.ts";
import { CONFIRMED, factType } from "./factCatalog.ts";
import { limitName, type Path, type RuleReading } from "./RuleReading.ts";

/** How a condition is read: in a case, where limits have no value yet, and as its own opposite. */
interface Manner {
  readonly inCase: boolean;
  readonly negate: boolean;
}

/** Reads a condition as authored into one without negations; what is wrong goes to the reading. */
export function readCondition(
  reading: RuleReading,
  condition: Condition,
  path: Path,
  inCase = false,
): ConditionNode {
  return read(reading, condition, path, { inCase, negate: false });
}

function read(reading: RuleReading, condition: Condition, path: Path, manner: Manner): ConditionNode {
  if ("not" in condition)
    return read(reading, condition.not, [...path, "not"], { ...manner, negate: !manner.negate });
  if ("all" in condition) return group(reading, condition.all, "all", path, manner);
  if ("any" in condition) return group(reading, condition.any, "any", path, manner);
  return leaf(reading, condition, path, manner);
}

function group(
  reading: RuleReading,
  children: readonly Condition[],
  written: Group["kind"],
  path: Path,
  manner: Manner,
): Group {
  const opposite = written === "all" ? "any" : "all";
  return {
    kind: manner.negate ? opposite : written,
    children: children.map((child, index) => read(reading, child, [...path, written, index], manner)),
  };
}

function leaf(reading: RuleReading, comparison: Comparison, path: Path, manner: Manner): Leaf {
  const { fact, operator } = comparison;
  const type = factType(fact);
  if (type === undefined) reading.unknownFact(fact, [...path, "fact"]);
  else if (type.kind === "number" && type.nominalOnly === true) {
    const found = `"${fact}", which is known at the nominal values only`;
    reading.report("nominal-only", [...path, "fact"], found, "a quantity that has a band of tolerances");
  } else if (isNumeric(operator) !== (type.kind === "number")) {
    const found = `${operator}, which cannot compare ${fact}: it is a ${type.kind}`;
    const fitting = isNumeric(operator)
      ? "equal, notEqual, in or notIn"
      : "a comparison of size, as lessThan";
    reading.report("wrong-operator", [...path, "operator"], found, fitting);
  }
  return {
    kind: "leaf",
    fact: fact === CONFIRMED ? ownConfirmation(reading, [...path, "fact"]) : fact,
    operator: manner.negate ? negated[operator] : operator,
    value: reference(reading, comparison, path, manner.inCase),
  };
}

/** What a person saw is a fact of this rule alone. */
function ownConfirmation(reading: RuleReading, path: Path): string {
  reading.asksToConfirm = true;
  if (reading.file.confirm === undefined)
    reading.report(
      "confirm-undeclared",
      path,
      `"${CONFIRMED}", in a rule that does not say what to look at`,
      "confirm: with check, moment and failure",
    );
  return confirmationPath(reading.file.id);
}

function reference(reading: RuleReading, comparison: Comparison, path: Path, inCase: boolean): Reference {
  const { fact, value } = comparison;
  const type = factType(fact);
  const at = [...path, "value"];
  if (typeof value === "object" && !Array.isArray(value)) {
    const limit = limitName(value.fact);
    if (limit === undefined) otherFact(reading, fact, value.fact, [...at, "fact"]);
    else ownLimit(reading, fact, limit, [...at, "fact"], inCase);
    return { kind: "fact", fact: value.fact };
  }
  if (type?.kind === "number") {
    const text = String(value);
    return { kind: "number", value: reading.number(text, type.unit, at), text };
  }
  const words = Array.isArray(value) ? value : [value];
  for (const [index, word] of words.entries()) {
    if (type === undefined || type.options.includes(word)) continue;
    const found = `"${word}", but ${fact} is never "${word}"`;
    const didYouMean = nearestWord(word, type.options);
    reading.report(
      "unknown-word",
      Array.isArray(value) ? [...at, index] : at,
      found,
      `one of ${type.options.join(", ")}`,
      { didYouMean },
    );
  }
  return { kind: "words", words };
}

function otherFact(reading: RuleReading, fact: string, name: string, path: Path): void {
  const type = factType(fact);
  const other = factType(name);
  if (other === undefined) reading.unknownFact(name, path);
  else if (type?.kind === "word" || other.kind === "word")
    reading.report("wrong-operator", path, `${fact} compared with ${name}, a ${other.kind}`, "two numbers");
  else if (type !== undefined) sameMeasure(reading, type.unit, other.unit, name, path);
}

function ownLimit(reading: RuleReading, fact: string, limit: string, path: Path, inCase: boolean): void {
  const known = Object.keys(reading.file.limits ?? {});
  if (!known.includes(limit)) {
    const expected =
      known.length === 0 ? `limits: with an entry "${limit}"` : known.map((one) => `limit.${one}`).join(", ");
    const near = nearestWord(limit, known);
    reading.report("limit-undeclared", path, `"limit.${limit}", which is not among its limits`, expected, {
      didYouMean: near === undefined ? undefined : `limit.${near}`,
    });
    return;
  }
  if (inCase) {
    const found = `"limit.${limit}" in the condition of a case, where limits have no value yet`;
    reading.report("limit-in-case", path, found, "a number with its unit, or another fact");
    return;
  }
  reading.usedLimits.add(limit);
  const type = factType(fact);
  if (type?.kind !== "number") return;
  const unit = reading.unitOfLimit(limit);
  if (unit === undefined) reading.limitFacts.set(limit, fact);
  else sameMeasure(reading, unit, type.unit, `limit.${limit}`, path);
}

function sameMeasure(reading: RuleReading, unit: string, other: string, name: string, path: Path): void {
  if (sameDimensions(unitOf(unit).dimensions, unitOf(other).dimensions)) return;
  const found = `"${name}", where ${unit} is compared with ${other}: they measure different things`;
  reading.report("wrong-unit", path, found, "the same kind of number on both sides");
}
