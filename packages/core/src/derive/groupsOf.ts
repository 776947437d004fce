import type { Quantity } from "./Quantity.ts";

/** Everything that a quantity takes: numbers, words and tables by name, each with its path. */
export function groupsOf(quantity: Quantity): readonly Readonly<Record<string, string>>[] {
  return [quantity.inputs, quantity.choices, quantity.tables];
}

/** The paths of everything that a quantity takes, by whichever way. */
export function pathsOf(quantity: Quantity): readonly string[] {
  return groupsOf(quantity).flatMap((group) => Object.values(group));
}
