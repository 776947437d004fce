import { quantities } from "../derive/generated/quantities.ts";
import { type CompiledRule, type Leaf, leavesOf } from "../judge/CompiledRule.ts";
import { exactly, type Fact } from "../judge/Fact.ts";
import { factType } from "../judge/factCatalog.ts";
import { fields } from "../read/fieldCatalog.ts";
import { signWord } from "../read/signWord.ts";
import { fromSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";

/** A value that is tried for a fact, as it stands in an example and as it is judged. */
export interface TriedValue {
  readonly fact: string;
  readonly text: string;
  readonly value: Fact;
}

function allLeaves({ when, requires, limits }: CompiledRule): readonly Leaf[] {
  return [when, requires, ...limits.flatMap((limit) => limit.cases.map((one) => one.when))].flatMap(leavesOf);
}

function numbersComparedWith(fact: string, rule: CompiledRule): readonly number[] {
  return allLeaves(rule)
    .filter((leaf) => leaf.fact === fact)
    .flatMap(({ value }) => {
      if (value.kind === "number") return [value.value];
      const limit = value.kind === "fact" ? rule.limits.find((one) => one.fact === value.fact) : undefined;
      return limit === undefined ? [] : [limit.value, ...limit.cases.map((one) => one.value)];
    });
}

/** A number of a field or quantity as an example writes it, exact. */
export function numberText(fact: string, si: number, unit: string): string | undefined {
  const spec = fields.get(fact)?.spec;
  const shown = Number(fromSi(si, unitOf(unit)).toPrecision(8));
  const tail = unit === "1" ? "" : ` ${unit}`;
  if (quantities.has(fact)) return `${shown}${tail}`;
  if (spec?.kind === "count") return Number.isInteger(shown) && shown >= 0 ? String(shown) : undefined;
  if (spec?.kind !== "dimension") return undefined;
  if (spec.places !== undefined) return `${shown}${tail} ${spec.places[0]} ± 0`;
  if (spec.signs === undefined) return `${shown}${tail} ± 0`;
  const word = signWord(spec, shown < 0 ? -1 : 1);
  return word === undefined ? undefined : `${Math.abs(shown)}${tail} ${word} ± 0`;
}

function triedNumbers(fact: string, unit: string, rules: readonly CompiledRule[]): readonly TriedValue[] {
  const limits = [...new Set(rules.flatMap((rule) => numbersComparedWith(fact, rule)))].sort((a, b) => a - b);
  const between = limits.slice(1).map((limit, index) => (limit + limits[index]!) / 2);
  const [first, last] = [limits[0], limits.at(-1)];
  const step = Math.max(...limits.map((limit) => Math.abs(limit)), 0) / 10 || 1;
  const outside = first === undefined || last === undefined ? [] : [last + step, first - step];
  return [...limits, ...between, ...outside].flatMap((si) => {
    const text = numberText(fact, si, unit);
    return text === undefined ? [] : [{ fact, text, value: exactly(si) }];
  });
}

/** Values at which one of two rules could change its mind: on, between and beyond what its facts are compared with. */
export function triedValues(rule: CompiledRule, other: CompiledRule): readonly TriedValue[] {
  const facts = [...new Set(allLeaves(rule).map((leaf) => leaf.fact))];
  return facts.flatMap((fact): readonly TriedValue[] => {
    const type = factType(fact);
    if (type?.kind === "number") return triedNumbers(fact, type.unit, [rule, other]);
    return (type?.options ?? [])
      .filter(() => !fact.endsWith(".place"))
      .map((word) => ({ fact, text: word, value: { kind: "word", word } }));
  });
}
