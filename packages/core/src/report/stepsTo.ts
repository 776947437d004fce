import { quantities } from "../derive/generated/quantities.ts";
import { isContradiction } from "../derive/isContradiction.ts";
import type { Quantity } from "../derive/Quantity.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import type { Asked, Nominals } from "../trace/Nominals.ts";
import { printField } from "./printValue.ts";

/** A number that goes into a step [SI]. */
export interface StepInput {
  /** As the formula calls it. */
  readonly symbol: string;
  /** Path of a field, or id of the quantity of a step before. */
  readonly path: string;
  readonly label: string;
  readonly value: number;
  /** Of a field: as it was written, or as it was taken where it was left out. Absent for a step before. */
  readonly written?: string;
  /** Whether it is a documented default. */
  readonly assumed: boolean;
}

/** One quantity on the way to another, at the nominal values. */
export interface DerivationStep {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly decimals: number;
  /** Formula of the way taken; absent where there is none, then `method` says how. */
  readonly formula?: string;
  readonly method?: string;
  readonly inputs: readonly StepInput[];
  /** Words and tables that it rests on: label of the field, and as it was written. */
  readonly beside: readonly { readonly path: string; readonly label: string; readonly written: string }[];
  /** What the way taken takes for granted, in words. */
  readonly takenFor: readonly string[];
  /** [SI]; infinite where nothing bounds it. */
  readonly value: number;
}

/** How a quantity comes about, or why it does not. */
export type Derived =
  | { readonly state: "value"; readonly steps: readonly DerivationStep[] }
  | { readonly state: "missing"; readonly missing: readonly string[] }
  | { readonly state: "impossible"; readonly reason: string };

function writtenAt(nominals: Nominals, path: string): string | undefined {
  const field = nominals.field(path);
  return field === undefined ? undefined : printField(field);
}

function inputOf(nominals: Nominals, symbol: string, path: string, value: number): StepInput {
  const quantity = quantities.get(path);
  const written = quantity === undefined ? writtenAt(nominals, path) : undefined;
  return {
    symbol,
    path,
    label: quantity?.name ?? fieldLabel(path),
    value,
    ...(written === undefined ? {} : { written }),
    assumed: nominals.isAssumed(path),
  };
}

/** The formula that was followed: the quantity's own, or that of the case or way. */
function formulaOf({ formula, cases }: Quantity, { index }: Asked["route"], words: readonly string[]) {
  return formula ?? cases[String(index + 1)] ?? words.map((word) => cases[word]).find(Boolean);
}

function stepOf(nominals: Nominals, quantity: Quantity, { route, takenFor, take }: Asked): DerivationStep {
  const { id, name, symbol, unit, decimals, method } = quantity;
  const { numbers, words, tables } = take();
  const formula = formulaOf(quantity, route, Object.values(words));
  const besides = [...Object.values(route.choices), ...Object.values(route.tables)];
  return {
    id,
    name,
    symbol,
    unit,
    decimals,
    ...(formula === undefined ? {} : { formula }),
    ...(method === undefined ? {} : { method }),
    inputs: Object.entries(numbers).map(([letter, value]) =>
      inputOf(nominals, letter, route.inputs[letter]!, value),
    ),
    beside: besides.flatMap((path) => {
      const written = writtenAt(nominals, path);
      return written === undefined ? [] : [{ path, label: fieldLabel(path), written }];
    }),
    takenFor,
    value: quantity.compute(numbers, words, tables, route.index),
  };
}

/**
 * The steps from entered dimensions to a quantity, at the nominal values of a build: each after those that it needs,
 * the quantity itself last.
 * @throws Error when there is no quantity of that id
 */
export function stepsTo(nominals: Nominals, id: string): Derived {
  const missing = nominals.lacking(id);
  if (missing.length > 0) return { state: "missing", missing };
  const steps = new Map<string, DerivationStep>();
  const walk = (one: string) => {
    const quantity = quantities.get(one);
    if (quantity === undefined || steps.has(one)) return;
    const asked = nominals.ask(quantity);
    for (const path of Object.values(asked.route.inputs)) walk(path);
    steps.set(one, stepOf(nominals, quantity, asked));
  };
  try {
    if (!quantities.has(id)) throw new Error(`no quantity is called "${id}"`);
    walk(id);
  } catch (error) {
    if (!isContradiction(error)) throw error;
    return { state: "impossible", reason: error.message };
  }
  return { state: "value", steps: [...steps.values()] };
}
