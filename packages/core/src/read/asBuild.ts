import type { Build } from "./Build.ts";
import { readBuild } from "./readData.ts";

/**
 * A build as it is, or read from plain data.
 * @throws InputError when the input is not a build
 */
export function asBuild(input: unknown): Build {
  const read = typeof input === "object" && input !== null && (input as Build).values instanceof Map;
  return read ? (input as Build) : readBuild(input);
}
