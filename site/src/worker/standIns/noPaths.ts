/**
 * Stands in, within a worker, for the library that reads paths into facts: rules of ours name facts and nothing within
 * them, and that library generates code.
 */
export function JSONPath(): never {
  throw new Error("a rule with a path into a fact cannot be judged in a worker");
}
