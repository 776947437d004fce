import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { compileRules, fields, type Quantity, quantities } from "trialfit";
import type { Random } from "../../packages/core/src/derive/seeded.ts";
import { parseDimension } from "../../packages/core/src/units/parseDimension.ts";
import { pick } from "./cylinderLayouts.ts";
import { fieldText, intoRange } from "./fieldText.ts";

/** What a build file has under a path. */
export interface Entry {
  readonly path: string;
  readonly text: string;
}

/** Relative move that keeps parts about where their fit was: ± 0.013 mm on a bore of 44 mm. */
const LITTLE = 3e-4;

/** The field entry for what a quantity's example gives: examples write signs where a build file has words. */
function entryOf(path: string, text: string, random: Random): readonly Entry[] {
  const spec = fields.get(path)?.spec;
  if (spec?.kind === "choice" || spec?.kind === "count") return [{ path, text }];
  if (spec?.kind !== "dimension") return [];
  const { nominal } = parseDimension(text, { unit: spec.unit });
  const value = intoRange(spec, nominal * (1 + LITTLE * (2 * random() - 1)));
  return [{ path, text: fieldText(spec, value, spec.places?.[0]) }];
}

function entriesOfQuantity({ inputs, choices, examples }: Quantity, random: Random): readonly Entry[] {
  const { given } = pick(examples, random);
  return Object.entries({ ...inputs, ...choices }).flatMap(([name, path]) =>
    given[name] === undefined ? [] : entryOf(path, given[name], random),
  );
}

function entriesOfRule({ examples }: RuleFile, random: Random): readonly Entry[] {
  return Object.entries(pick(examples, random).given).flatMap(([path, text]) =>
    fields.has(path) ? [{ path, text }] : [],
  );
}

const facts = new Map(compileRules(ruleFiles).map((rule) => [rule.file.id, rule.facts]));

/**
 * What makes a build look closer at one rule: the fields that one of its examples gives, and those that a worked example
 * of each of its quantities gives, a little moved. Sizes that only fit each other meet in no other way: what is in one
 * list is to be taken together.
 */
export function exampleEntries(file: RuleFile, random: Random): readonly (readonly Entry[])[] {
  const worked = facts.get(file.id)!.flatMap((fact) => quantities.get(fact) ?? []);
  return [
    ...entriesOfRule(file, random).map((entry) => [entry]),
    ...worked.map((quantity) => entriesOfQuantity(quantity, random)),
  ];
}
