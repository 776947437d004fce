import type { RuleExample } from "@trialfit/rules";
import { deriveAll } from "../derive/deriveAll.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { confirmationValue, isConfirmationPath } from "../read/confirmations.ts";
import type { DimensionValue } from "../read/FieldValue.ts";
import { InputError } from "../read/Problem.ts";
import { readBuild } from "../read/readBuild.ts";
import { DimensionError, type ParsedDimension, parseDimension } from "../units/parseDimension.ts";
import type { CompiledRule } from "./CompiledRule.ts";
import type { Lookup } from "./decide.ts";
import { CONFIRMED } from "./factCatalog.ts";
import { judgeAll } from "./judgeAll.ts";
import { factOfField, lookupOf } from "./lookupOf.ts";
import type { Verdict } from "./Verdict.ts";

/** The number of a quantity; what it refuses says which quantity it is. */
function readQuantity(id: string, text: string): ParsedDimension {
  try {
    return parseDimension(text, { unit: quantities.get(id)!.unit });
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    const { message, expected } = error;
    const found = `"${text}" (${message})`;
    throw new InputError([
      { file: "example", line: undefined, column: undefined, field: id, found, expected },
    ]);
  }
}

function quantityValue(id: string, text: string): DimensionValue {
  const { nominal, minus = 0, plus = 0, unit } = readQuantity(id, text);
  return {
    kind: "dimension",
    nominal,
    low: nominal - minus,
    high: nominal + plus,
    unit: unit.symbol,
    text,
    provenance: "data-sheet",
    toleranceFrom: "stated",
  };
}

function buildOf(given: Readonly<Record<string, string>>): object {
  const build: Record<string, unknown> = { trialfit: "1", name: "example" };
  for (const [path, text] of Object.entries(given)) {
    const [part, field] = path.split(".") as [string, string | undefined];
    if (field === undefined) build[part] = text;
    else build[part] = { ...(build[part] as object | undefined), [field]: text };
  }
  return build;
}

/**
 * The facts of an example: only what it gives is known, no default is taken.
 * @param facts names of the fields and quantities that will be asked for
 * @throws InputError when the example's values cannot be read.
 */
export function exampleLookup(facts: readonly string[], { given }: Pick<RuleExample, "given">): Lookup {
  const entries = Object.entries(given);
  const overrides = new Map(
    entries.flatMap(([name, text]) =>
      quantities.has(name) ? [[name, quantityValue(name, text)] as const] : [],
    ),
  );
  const { values } = readBuild(
    buildOf(Object.fromEntries(entries.filter(([name]) => !quantities.has(name) && name !== CONFIRMED))),
  );
  const wanted = facts.filter((fact) => quantities.has(fact) && !overrides.has(fact));
  const derivations = deriveAll(values, quantities, wanted, overrides);
  const lookup = lookupOf(new Map([...values, ...overrides]), derivations);
  const seen = given[CONFIRMED];
  if (seen === undefined) return lookup;
  if (seen !== "yes" && seen !== "no")
    throw new InputError([
      {
        file: "example",
        line: undefined,
        column: undefined,
        field: CONFIRMED,
        found: `"${seen}"`,
        expected: "yes or no",
      },
    ]);
  const confirmed = factOfField(CONFIRMED, confirmationValue({ seen }));
  return (name) => (isConfirmationPath(name) ? confirmed : lookup(name));
}

/**
 * What a rule says of one of its own examples.
 * @throws InputError when the example's values cannot be read.
 */
export async function judgeExample(
  rule: CompiledRule,
  example: Pick<RuleExample, "given">,
): Promise<Verdict> {
  const [verdict] = await judgeAll([rule], exampleLookup(rule.facts, example));
  return verdict!;
}
