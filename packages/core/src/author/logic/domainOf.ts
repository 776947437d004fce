import type { Operator } from "@trialfit/rules";
import type { CompiledLimit, Leaf } from "../../judge/CompiledRule.ts";
import { factType } from "../../judge/factCatalog.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import { type Domain, everyNumber, type Interval } from "./Domain.ts";

/** Everything that a fact can be, by its declaration. */
export function wholeDomain(name: string): Domain {
  const type = factType(name);
  if (type?.kind === "word") return { kind: "words", words: type.options };
  const spec = fields.get(name)?.spec;
  if (spec?.kind === "count")
    return { ...everyNumber(true), low: spec.least, lowOpen: false, high: spec.most, highOpen: false };
  if (spec?.kind !== "dimension") return everyNumber();
  const [low, high] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
  return { ...everyNumber(), low: low!, lowOpen: false, high: high!, highOpen: false };
}

function side(operator: Operator, value: number): Interval {
  const open = !operator.endsWith("Inclusive");
  return operator.startsWith("greater")
    ? { ...everyNumber(), low: value, lowOpen: open }
    : { ...everyNumber(), high: value, highOpen: open };
}

const mirrored: Readonly<Partial<Record<Operator, Operator>>> = {
  lessThan: "greaterThan",
  lessThanInclusive: "greaterThanInclusive",
  greaterThan: "lessThan",
  greaterThanInclusive: "lessThanInclusive",
};

/** What a comparison leaves over, and of what: of a fact, or of the difference of two. */
export interface Restriction {
  readonly of: string;
  readonly domain: Domain;
  /** Everything that it could be before. */
  readonly whole: Domain;
}

/** A comparison as a restriction. A limit whose cases differ is a fact of its own: its value is not one number. */
export function restrictionOf(leaf: Leaf, limits: readonly CompiledLimit[]): Restriction {
  const { fact, operator, value } = leaf;
  const whole = wholeDomain(fact);
  if (value.kind === "words") {
    const wanted = operator === "in" || operator === "equal";
    const options = whole.kind === "words" ? whole.words : [];
    const words = options.filter((word) => value.words.includes(word) === wanted);
    return { of: fact, domain: { kind: "words", words }, whole };
  }
  if (value.kind === "number") return { of: fact, domain: side(operator, value.value), whole };
  const limit = limits.find((one) => one.fact === value.fact);
  if (limit !== undefined && limit.cases.length === 0)
    return { of: fact, domain: side(operator, limit.value), whole };
  const turn = fact > value.fact;
  const [first, second] = turn ? [value.fact, fact] : [fact, value.fact];
  const domain = side(turn ? (mirrored[operator] ?? operator) : operator, 0);
  return { of: `${first} - ${second}`, domain, whole: everyNumber() };
}
