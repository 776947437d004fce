import { isContradiction } from "./isContradiction.ts";

/** What is computed, or undefined where it meets inputs that cannot be. */
export function unlessImpossible<T>(compute: () => T): T | undefined {
  try {
    return compute();
  } catch (error) {
    if (isContradiction(error)) return undefined;
    throw error;
  }
}
