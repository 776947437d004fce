import type { FieldValue } from "../read/FieldValue.ts";
import type { Derivation } from "./Derivation.ts";
import { numberOfValue } from "./numberOfValue.ts";
import type { Quantity } from "./Quantity.ts";

/** As many derivations as are kept: some builds' worth of every quantity. */
const KEPT = 8192;

/** By what they rest on; the one that was asked for longest ago comes first. */
const kept = new Map<string, Derivation>();

/** How much of a derivation is asked for: all of it, or no more than its band. */
export type Asked = "whole" | "band";

/** What decides a derivation, beside the values. */
export interface Rests {
  readonly quantity: Quantity;
  /** Fields and overridden quantities under it. */
  readonly paths: Iterable<string>;
  /** The ways by which it and what lies under it are computed. */
  readonly ways: string;
}

/** The name under which a derivation from these values is remembered. */
export function derivationKey(
  { quantity, paths, ways }: Rests,
  value: (path: string) => FieldValue | undefined,
): string {
  let key = `${numberOf(quantity)} ${ways}`;
  for (const path of paths) key += ` ${numberOfValue(path, value(path))}`;
  return key;
}

/** A derivation of no more than the band is kept beside the whole one, under a name of its own. */
const nameOf = (key: string, asked: Asked) => (asked === "band" ? `band ${key}` : key);

/**
 * A derivation that was made before from the same values. When a builder changes one field, or a part is tried in
 * another place, only what rests on the change is searched anew. Where a band is asked for, a whole one serves.
 */
export function rememberedDerivation(key: string, asked: Asked): Derivation | undefined {
  const name = kept.has(key) ? key : nameOf(key, asked);
  const result = kept.get(name);
  if (result !== undefined) keep(name, result);
  return result;
}

/** Remembers a derivation. What cannot be is said anew each time: its words name values of other quantities. */
export function rememberDerivation(key: string, result: Derivation, asked: Asked): void {
  if (result.state === "value") keep(nameOf(key, asked), result);
}

function keep(key: string, result: Derivation): void {
  kept.delete(key);
  kept.set(key, result);
  if (kept.size > KEPT) kept.delete(kept.keys().next().value!);
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
