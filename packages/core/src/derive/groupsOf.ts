import type { Quantity } from "./Quantity.ts";

/** What a computation asks for, by name, and the ways to it. */
export type Asking = Pick<Quantity, "inputs" | "choices" | "tables" | "routes">;

/** Everything that a quantity takes: numbers, words and tables by name, each with its path. */
export function groupsOf(asking: Asking): readonly Readonly<Record<string, string>>[] {
  return [asking.inputs, asking.choices, asking.tables];
}

/** The paths of everything that a quantity takes, by whichever way. */
export function pathsOf(asking: Asking): readonly string[] {
  return groupsOf(asking).flatMap((group) => Object.values(group));
}
