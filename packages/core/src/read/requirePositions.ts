import type { FieldValue } from "./FieldValue.ts";
import { InputError, type Problem } from "./Problem.ts";
import type { Source } from "./parseSource.ts";
import { positionsBeyond } from "./positions.ts";

/**
 * The check that spans fields: readings stand at positions that the engine has.
 * @throws InputError
 */
export function requirePositions(
  values: ReadonlyMap<string, FieldValue>,
  file: string,
  locate: Source["locate"],
): void {
  const beyond = positionsBeyond(values);
  if (beyond.length === 0) return;
  throw new InputError(
    beyond.map(({ path, ...rest }): Problem => {
      const place = locate(path, true);
      return { file, line: place?.line, column: place?.column, field: path.join("."), ...rest };
    }),
  );
}
