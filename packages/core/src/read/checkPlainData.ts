import { FORBIDDEN_KEYS, MAX_DEPTH } from "./dataLimits.ts";
import { InputError } from "./Problem.ts";

/**
 * Refuses data that no build file could hold: keys that reach into object prototypes, cycles, deep nesting.
 * @throws InputError naming the place.
 */
export function checkPlainData(data: unknown, file: string, path: readonly string[] = []): void {
  if (typeof data !== "object" || data === null) return;
  const refuse = (found: string, expected: string): never => {
    throw new InputError([
      { file, line: undefined, column: undefined, field: path.join("."), found, expected },
    ]);
  };
  if (path.length > MAX_DEPTH) refuse("deeply nested or circular data", `at most ${MAX_DEPTH} levels`);
  for (const [key, value] of Object.entries(data)) {
    if (FORBIDDEN_KEYS.has(key)) refuse(`the key "${key}"`, "the name of a field");
    checkPlainData(value, file, [...path, key]);
  }
}
