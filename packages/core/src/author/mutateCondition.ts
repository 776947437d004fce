import type { Comparison, Condition, Operator } from "@trialfit/rules";
import { factType } from "../judge/factCatalog.ts";
import type { Mutant } from "./Mutant.ts";
import { moveNumber } from "./moveNumber.ts";

type Path = Mutant["path"];

/** A condition with one thing changed. */
export type ConditionMutant = Omit<Mutant, "file"> & { readonly condition: Condition };

const turned: Readonly<Record<Operator, Operator>> = {
  lessThan: "greaterThan",
  lessThanInclusive: "greaterThanInclusive",
  greaterThan: "lessThan",
  greaterThanInclusive: "lessThanInclusive",
  equal: "notEqual",
  notEqual: "equal",
  in: "notIn",
  notIn: "in",
};

const edge: Readonly<Partial<Record<Operator, Operator>>> = {
  lessThan: "lessThanInclusive",
  lessThanInclusive: "lessThan",
  greaterThan: "greaterThanInclusive",
  greaterThanInclusive: "greaterThan",
};

function operatorMutants(leaf: Comparison, path: Path): readonly ConditionMutant[] {
  const to = (kind: Mutant["kind"], operator: Operator): ConditionMutant => ({
    kind,
    path: [...path, "operator"],
    change: `${leaf.operator} of ${leaf.fact} read as ${operator}`,
    condition: { ...leaf, operator },
  });
  const other = edge[leaf.operator];
  return [
    to("operator-turned", turned[leaf.operator]),
    ...(other === undefined ? [] : [to("edge-moved", other)]),
  ];
}

const listed: Readonly<Partial<Record<Operator, Operator>>> = {
  equal: "in",
  in: "in",
  notEqual: "notIn",
  notIn: "notIn",
};

/** The same comparison with one word more, for every word that the fact can be and that is not named yet. */
function addedWords(leaf: Comparison, words: readonly string[], path: Path): readonly ConditionMutant[] {
  const { fact } = leaf;
  const type = factType(fact);
  const operator = listed[leaf.operator];
  if (type?.kind !== "word" || operator === undefined) return [];
  return type.options
    .filter((word) => !words.includes(word))
    .map((word) => ({
      kind: "word-added",
      path: [...path, "value"],
      change: `"${word}" taken as well for ${fact}`,
      condition: { fact, operator, value: [...words, word] },
    }));
}

function valueMutants(leaf: Comparison, path: Path): readonly ConditionMutant[] {
  const { fact, value } = leaf;
  const at = [...path, "value"];
  if (Array.isArray(value)) {
    const dropped = value.length < 2 ? [] : value;
    return [
      ...dropped.map(
        (word, index): ConditionMutant => ({
          kind: "word-dropped",
          path: [...at, index],
          change: `"${word}" left out for ${fact}`,
          condition: { ...leaf, value: value.filter((one) => one !== word) },
        }),
      ),
      ...addedWords(leaf, value, path),
    ];
  }
  if (typeof value !== "string") return [];
  if (factType(fact)?.kind !== "number") return addedWords(leaf, [value], path);
  return moveNumber(value, fact).map((moved) => ({
    kind: "number-moved",
    path: at,
    change: `${value} for ${fact} read as ${moved}`,
    condition: { ...leaf, value: moved },
  }));
}

function groupMutants(
  children: readonly Condition[],
  path: Path,
  wrap: (children: Condition[]) => Condition,
): readonly ConditionMutant[] {
  const without = (index: number) => children.filter((_, other) => other !== index);
  const dropped = children.length < 2 ? [] : children.map((_, index) => index);
  return [
    ...dropped.map(
      (index): ConditionMutant => ({
        kind: "member-dropped",
        path: [...path, index],
        change: "this condition left out",
        condition: wrap(without(index)),
      }),
    ),
    ...children.flatMap((child, index) =>
      mutateCondition(child, [...path, index]).map((mutant) => ({
        ...mutant,
        condition: wrap(children.map((one, other) => (other === index ? mutant.condition : one))),
      })),
    ),
  ];
}

/** Every change of one thing in a condition. */
export function mutateCondition(condition: Condition, path: Path): readonly ConditionMutant[] {
  if ("not" in condition) {
    const inner = mutateCondition(condition.not, [...path, "not"]);
    return [
      { kind: "not-dropped", path: [...path, "not"], change: "its `not` left out", condition: condition.not },
      ...inner.map((mutant) => ({ ...mutant, condition: { not: mutant.condition } })),
    ];
  }
  if ("all" in condition) return groupMutants(condition.all, [...path, "all"], (all) => ({ all }));
  if ("any" in condition) return groupMutants(condition.any, [...path, "any"], (any) => ({ any }));
  return [...operatorMutants(condition, path), ...valueMutants(condition, path)];
}
