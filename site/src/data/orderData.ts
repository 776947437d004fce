import { type CompiledRule, type Field, fields, fieldsOfRule, parts } from "trialfit";
import { rules } from "./catalog.ts";
import type { OrderBook } from "./OrderBook.ts";
import { prettyUnit } from "./prettyUnit.ts";
import { spaced } from "./words.ts";

/** Parts that somebody sells, in the order of the build file. */
export const boughtParts = parts.map(({ spec }) => spec).filter(({ bought }) => bought !== false);

const bought = new Set(boughtParts.map(({ id }) => id));

/** Parts that a rule is about, or on whose fields its verdict rests: ordering one of them wakes it. */
export function wakingParts(rule: CompiledRule): readonly string[] {
  const read = [...fieldsOfRule(rule, "every")].map((path) => fields.get(path)?.part?.id);
  return [...new Set([...rule.file.parts, ...read])].filter(
    (id) => id !== undefined && bought.has(id),
  ) as string[];
}

function formOf({ spec }: Field): string {
  switch (spec.kind) {
    case "dimension":
      return spec.unit === "1" ? "a plain number" : `${prettyUnit(spec.unit)}, with its tolerance`;
    case "count":
      return "a count";
    case "choice":
      return Object.keys(spec.options).map(spaced).join(", ");
    case "table":
      return "a table";
    case "text":
      return "in words";
  }
}

const asked = [...fields.values()].filter(
  ({ part, spec }) => part !== undefined && bought.has(part.id) && spec.kind !== "text",
);
const places = new Map(asked.map(({ path }, index) => [path, index]));

function placesOf(paths: Iterable<string>): readonly number[] {
  return [...paths].flatMap((path) => places.get(path) ?? []).sort((a, b) => a - b);
}

function fieldsFor(rule: CompiledRule): readonly [readonly number[], readonly number[]] {
  const needed = fieldsOfRule(rule, "surest");
  const every = fieldsOfRule(rule, "every");
  return [placesOf(needed), placesOf([...every].filter((path) => !needed.has(path)))];
}

/** The fields of all parts that are bought, by the rules that rest on them. */
export const orderData: OrderBook = {
  parts: Object.fromEntries(boughtParts.map(({ id, label }) => [id, label])),
  fields: asked.map((field) => ({
    part: field.part!.id,
    label: field.spec.label,
    form: formOf(field),
    help: field.spec.help,
    usual: field.spec.assumed !== undefined,
  })),
  rules: Object.fromEntries(rules.map((rule) => [rule.file.id, fieldsFor(rule)])),
};
