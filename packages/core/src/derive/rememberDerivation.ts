import type { FieldValue } from "../read/FieldValue.ts";
import type { Derivation } from "./Derivation.ts";
import type { Quantity } from "./Quantity.ts";

/** As many derivations as are kept: some builds' worth of every quantity. */
const KEPT = 8192;

/** By what they rest on; the one that was asked for longest ago comes first. */
const kept = new Map<string, Derivation>();

/** One value as far as a derivation depends on it. */
function essence(value: FieldValue | undefined): unknown {
  switch (value?.kind) {
    case "dimension":
      return [value.nominal, value.low, value.high, value.provenance, value.text];
    case "choice":
      return [value.value, value.provenance];
    case "table":
      return [value.rows, value.provenance];
    default:
      return null;
  }
}

/** What decides a derivation, beside the values. */
export interface Rests {
  readonly quantity: Quantity;
  /** Fields and overridden quantities under it. */
  readonly paths: readonly string[];
  /** The ways by which it and what lies under it are computed. */
  readonly ways: string;
}

/**
 * A derivation that was made before from the same values, or a new one. When a builder changes one field, or a part
 * is tried in another place, only what rests on the change is searched anew. What cannot be is said anew each time:
 * its words also name values that were worked out for others.
 */
export function rememberDerivation(
  { quantity, paths, ways }: Rests,
  value: (path: string) => FieldValue | undefined,
  derive: () => Derivation,
): Derivation {
  const values = JSON.stringify(paths.map((path) => [path, essence(value(path))]));
  const key = `${numberOf(quantity)} ${ways} ${values}`;
  const result = kept.get(key) ?? derive();
  if (result.state !== "value") return result;
  kept.delete(key);
  kept.set(key, result);
  if (kept.size > KEPT) kept.delete(kept.keys().next().value!);
  return result;
}

const numbers = new WeakMap<Quantity, number>();
let count = 0;

/** A number for each declaration of a quantity: another catalog may give its id to another one. */
function numberOf(quantity: Quantity): number {
  let number = numbers.get(quantity);
  if (number === undefined) {
    count += 1;
    number = count;
    numbers.set(quantity, number);
  }
  return number;
}
