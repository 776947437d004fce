import type { FieldValue } from "../read/FieldValue.ts";

/** As many different values as are told apart; then counting goes on with empty hands. */
const KEPT = 32_768;

const numbers = new Map<string, number>();
let byValue = new WeakMap<FieldValue, { readonly path: string; readonly number: number }>();
let count = 0;

/** One value as far as what is derived from it depends on it. */
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

function find(path: string, value: FieldValue | undefined): number {
  const text = JSON.stringify([path, essence(value)]);
  let number = numbers.get(text);
  if (number === undefined) {
    if (numbers.size >= KEPT) {
      numbers.clear();
      byValue = new WeakMap();
    }
    count += 1;
    number = count;
    numbers.set(text, number);
  }
  return number;
}

/**
 * A whole number for a value under a path: the same one for values between which nothing that is derived can tell.
 * Values that were read once and stand in one build after another are looked at once.
 */
export function numberOfValue(path: string, value: FieldValue | undefined): number {
  if (value === undefined) return find(path, value);
  const known = byValue.get(value);
  if (known?.path === path) return known.number;
  const number = find(path, value);
  byValue.set(value, { path, number });
  return number;
}
