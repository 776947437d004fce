import type { Build } from "./Build.ts";
import { parseSource } from "./parseSource.ts";
import { readFrom } from "./readData.ts";

export { readBuild } from "./readData.ts";

/**
 * Reads a build file (YAML or JSON).
 * @param text the file's text
 * @param file its name, for messages
 * @throws InputError with every problem: file, line, column, field, found, expected.
 */
export function readBuildText(text: string, file = "build"): Build {
  const source = parseSource(text, file);
  return readFrom(source.data, file, source.locate);
}
