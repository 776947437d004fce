import * as z from "zod/mini";
import type { Build } from "./Build.ts";
import { buildSchema } from "./buildSchema.ts";
import { checkPlainData } from "./checkPlainData.ts";
import { type Confirmation, confirmationPath, confirmationValue } from "./confirmations.ts";
import { describeIssue } from "./describeIssue.ts";
import type { FieldValue } from "./FieldValue.ts";
import type { ReadField } from "./fieldSchema.ts";
import { InputError, type Problem } from "./Problem.ts";
import type { Source } from "./parseSource.ts";
import { requirePositions } from "./requirePositions.ts";
import type { WantedValue } from "./WantedValue.ts";

// zod otherwise probes for code generation, which a page's content-security policy may forbid.
z.config({ jitless: true });

function isReadField(value: unknown): value is ReadField {
  return (
    typeof value === "object" &&
    value !== null &&
    "value" in value &&
    typeof (value as ReadField).value === "object"
  );
}

/** Where what was read goes: what the build has, and what is to be found. */
interface Found {
  readonly values: Map<string, FieldValue>;
  readonly wanted: Map<string, WantedValue>;
}

function collect(tree: object, prefix: string, into: Found): void {
  for (const [name, entry] of Object.entries(tree)) {
    const path = prefix === "" ? name : `${prefix}.${name}`;
    if (isReadField(entry)) {
      if (entry.value.kind === "wanted") into.wanted.set(path, entry.value);
      else into.values.set(path, entry.value);
      const place = entry.place ?? (entry.value.kind === "wanted" ? entry.value.place : undefined);
      if (place !== undefined)
        into.values.set(`${path}.place`, { kind: "choice", value: place, provenance: "target" });
    } else if (typeof entry === "object" && entry !== null) collect(entry, path, into);
  }
}

/** Reads a build from data whose places in a text can be found. @throws InputError with every problem */
export function readFrom(data: unknown, file: string, locate: Source["locate"]): Build {
  const result = buildSchema.safeParse(data);
  if (!result.success) {
    const problems = result.error.issues.flatMap((issue) =>
      describeIssue(issue, data).map(({ path, key, ...rest }): Problem => {
        const place = locate(path, key);
        return { file, line: place?.line, column: place?.column, ...rest };
      }),
    );
    problems.sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
    throw new InputError(problems);
  }
  const values = new Map<string, FieldValue>();
  const wanted = new Map<string, WantedValue>();
  const { confirmations: said, aims: written, ...fields } = result.data;
  collect(fields, "", { values, wanted });
  requirePositions(values, file, locate);
  const confirmations = new Map<string, Confirmation>(Object.entries(said ?? {}));
  for (const [rule, confirmation] of confirmations)
    values.set(confirmationPath(rule), confirmationValue(confirmation));
  const aims = new Map(
    Object.entries(written ?? {}).map(([id, text]) => [id, { text: String(text), ...locate(["aims", id]) }]),
  );
  const { name } = result.data;
  return { name, values, confirmations, wanted, aims, file: file === "build" ? undefined : file };
}

/**
 * Reads a build that another program made: the same shape as the file, as plain data.
 * @throws InputError with every problem; line and column are undefined.
 */
export function readBuild(data: unknown, file = "build"): Build {
  checkPlainData(data, file);
  return readFrom(data, file, () => undefined);
}
