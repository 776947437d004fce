import { readFileSync } from "node:fs";
import {
  type Build,
  type CompiledRule,
  type DimensionValue,
  type FieldValue,
  fields,
  pathsOf,
  quantities,
  readBuildText,
} from "trialfit";
import type { PartialJudgeInput, PartKind } from "../../packages/core/src/compile/PartialJudge.ts";
import { decidingFacts } from "../../packages/core/src/judge/decidingFacts.ts";

type Random = () => number;
type Values = ReadonlyMap<string, FieldValue>;

const demo = (name: string): Build =>
  readBuildText(
    readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8"),
    name,
  );

/** The demo builds. */
export const demoPair: readonly [Build, Build] = [demo("harrow-eight"), demo("larkspur-hill")];

const dear = new Map<string, boolean>();

/** Whether a fact rests on anything that is searched inside of tolerances and has no closed formula. */
function isDear(fact: string): boolean {
  let known = dear.get(fact);
  if (known === undefined) {
    const quantity = quantities.get(fact);
    known =
      quantity !== undefined &&
      ((quantity.shape === "guarded" && quantity.formula === undefined) || pathsOf(quantity).some(isDear));
    dear.set(fact, known);
  }
  return known;
}

/** Rules that take next to no time to judge on a new build. */
export function cheapRules(rules: readonly CompiledRule[]): readonly CompiledRule[] {
  return rules.filter((rule) => ![...decidingFacts(rule), ...rule.facts].some(isDear));
}

/** Share of an option's fields that it leaves out, and that come from the other build. */
const LEFT_OUT = 0.06;
const OTHERS = 0.15;
/** Share of dimensions that were measured for each of their places, where they can be. */
const MEASURED = 0.3;

const partOf = (path: string) => path.slice(0, path.indexOf("."));
const of = (values: Values, part: string) => [...values].filter(([path]) => partOf(path) === part);

function moved(value: DimensionValue, random: Random): DimensionValue {
  if (Number.isInteger(value.nominal)) return value;
  const scale = 1 + 0.04 * (random() - 0.5) * random();
  const { nominal, low, high } = value;
  return {
    ...value,
    nominal: nominal * scale,
    low: low * scale,
    high: high * scale,
    text: `${nominal * scale}`,
  };
}

/** Any change of one entry: another size, readings by place, the other build's value, or left out. */
export function changedEntry(
  path: string,
  [first, second]: readonly [Values, Values],
  random: Random,
  places: number,
): FieldValue | undefined {
  const value = first.get(path);
  const kind = random();
  if (kind < 0.15) return undefined;
  if (kind < 0.3 || value?.kind !== "dimension") return second.get(path);
  const spec = fields.get(path)?.spec;
  const placed = places > 0 && spec?.kind === "dimension" && spec.per !== undefined && random() < MEASURED;
  return placed ? measured(value, places, random) : moved(value, random);
}

/** A dimension as if it had been measured at some of its places. */
function measured(value: DimensionValue, count: number, random: Random): DimensionValue {
  const positions: Record<string, DimensionValue> = {};
  for (let number = 1; number <= count; number += 1)
    if (random() < 0.9) positions[number] = { ...moved(value, random), provenance: "measured" };
  return { ...value, positions, ...(random() < 0.5 ? { elsewhere: value } : {}) };
}

function optionOf(
  part: string,
  [first, second]: readonly [Values, Values],
  random: Random,
  places: number,
): Values {
  const own = of(first, part).filter(() => random() > LEFT_OUT);
  const others = of(second, part).filter(() => random() < OTHERS);
  return new Map(
    [...own, ...others].map(([path, value]): [string, FieldValue] => {
      if (value.kind !== "dimension") return [path, value];
      const spec = fields.get(path)?.spec;
      const placed =
        places > 0 && spec?.kind === "dimension" && spec.per !== undefined && random() < MEASURED;
      const one = moved(value, random);
      return [path, placed ? measured(one, places, random) : one];
    }),
  );
}

/**
 * Invented lists of parts: of each kind variations of the part of one build, with some fields of another build's and
 * some left out.
 * @param parts keys of the kinds in the build file, in the order of choosing
 * @param count options of each kind
 * @param places up to which place dimensions are measured one by one; 0: none is
 */
export function partLists(
  [first, second]: readonly [Build, Build],
  rules: readonly CompiledRule[],
  parts: readonly string[],
  count: number,
  random: Random,
  places = 0,
): PartialJudgeInput {
  const kinds = parts.map(
    (part): PartKind => ({
      name: part,
      options: Array.from({ length: count }, () => ({
        values: optionOf(part, [first.values, second.values], random, places),
      })),
    }),
  );
  return { fixed: first, kinds, rules };
}

/** The build with one option of each kind, or of the first kinds alone. */
export function buildWith({ fixed, kinds }: PartialJudgeInput, options: readonly number[]): Build {
  const values = new Map(fixed.values);
  for (const { options: all } of kinds)
    for (const option of all) for (const path of option.values.keys()) values.delete(path);
  for (const [level, option] of options.entries())
    for (const [path, value] of kinds[level]!.options[option]!.values) values.set(path, value);
  return { ...fixed, values };
}
