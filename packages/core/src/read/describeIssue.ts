import type * as z from "zod/mini";
import { wayOfMakingIds } from "../tables/waysOfMaking.ts";
import { describeSyntax } from "../units/parseDimension.ts";
import { parts, topFields } from "./buildSchema.ts";
import { confirmationKeys, expectedConfirmation } from "./confirmations.ts";
import { describeCount } from "./describeCount.ts";
import { describeTable } from "./describeTable.ts";
import { type FieldSpec, provenances } from "./FieldSpec.ts";
import { fields } from "./fieldCatalog.ts";
import { detailKeys } from "./fields.ts";
import { nearestWord } from "./nearestWord.ts";
import type { Problem } from "./Problem.ts";
import { syntaxOf } from "./syntaxOf.ts";

type Issue = z.core.$ZodIssue;
type Description = Pick<Problem, "field" | "found" | "expected" | "didYouMean"> & {
  path: readonly PropertyKey[];
  key?: boolean;
};

function show(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null || value === "") return "an empty value";
  if (Array.isArray(value)) return "a list";
  if (typeof value === "object") return "a group of fields";
  const text = String(value);
  return `"${text.length > 60 ? `${text.slice(0, 57)}…` : text}"`;
}

function expectedOf(spec: FieldSpec): string {
  switch (spec.kind) {
    case "dimension":
      return describeSyntax(syntaxOf(spec));
    case "choice":
      return `one of ${Object.keys(spec.options).join(", ")}`;
    case "count":
      return describeCount(spec);
    case "table":
      return describeTable(spec);
    case "text":
      return "a text";
  }
}

/** What belongs inside the longer form of a field. */
function expectedDetail(spec: FieldSpec, key: string): string {
  if (spec.kind === "table") return `rows such as ${spec.row}`;
  if (key === "provenance") return `one of ${provenances.join(", ")}`;
  if (key === "made") return `one of ${wayOfMakingIds.join(", ")}`;
  if (key === "readings")
    return 'readings by number of cylinder or bearing, such as { "1": 88.51 mm, "2": { top: { along: 88.51 mm, across: 88.51 mm } } }';
  return `a text${spec.kind === "dimension" ? `; for the value ${expectedOf(spec)}` : ""}`;
}

function knownKeys(path: readonly PropertyKey[]): readonly string[] {
  if (path.length === 0)
    return [
      "trialfit",
      "name",
      ...Object.keys(topFields),
      ...parts.map((part) => part.spec.key),
      "confirmations",
      "aims",
    ];
  if (path[0] === "confirmations") return confirmationKeys;
  const part = parts.find((one) => one.spec.key === String(path[0]));
  if (path.length === 1 && part !== undefined) return Object.keys(part.fields);
  const { spec } = specAt(path);
  if (spec?.kind === "table") return Object.keys(spec.columns);
  return detailKeys;
}

/** What stands at a path, and at which depth it begins: a field at the top, a field of a part, or a cell of a table. */
function specAt(path: readonly PropertyKey[]): { spec: FieldSpec | undefined; depth: number } {
  const top = fields.get(String(path[0]))?.spec;
  if (top !== undefined) return { spec: top, depth: 1 };
  const spec = fields.get(path.slice(0, 2).join("."))?.spec;
  const cell = spec?.kind === "table" && path.length >= 4 ? spec.columns[String(path[3])] : undefined;
  return cell === undefined ? { spec, depth: 2 } : { spec: cell, depth: 4 };
}

function valueAt(data: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === "object" && value !== null ? (value as Record<PropertyKey, unknown>)[step] : undefined,
    data,
  );
}

function describeUnknownKey(
  key: string,
  path: readonly PropertyKey[],
  known: readonly string[],
): Description {
  const near = nearestWord(key, known);
  return {
    path: [...path, key],
    key: true,
    field: [...path, key].join("."),
    found: `the unknown field "${key}"`,
    expected:
      known.length > 30
        ? "a field of the build file (`trialfit schema` lists them)"
        : `one of ${known.join(", ")}`,
    ...(near === undefined ? {} : { didYouMean: near }),
  };
}

/** Turns one zod issue into what was found and what was expected, in the words of the build file. */
export function describeIssue(issue: Issue, data: unknown): readonly Description[] {
  const path = issue.path;
  const field = path.join(".");
  const found = show(valueAt(data, path));
  if (issue.code === "unrecognized_keys") {
    const inner = Object.keys((valueAt(data, path) as object | undefined) ?? {});
    const allowed = knownKeys(path);
    return issue.keys
      .filter((key) => inner.includes(key))
      .map((key) => describeUnknownKey(key, path, allowed));
  }
  if (issue.code === "invalid_union") {
    const telling = issue.errors.find((branch) =>
      branch.some((one) => one.path.length > 0 || one.code === "unrecognized_keys"),
    );
    if (telling !== undefined) {
      return telling.flatMap((one) => describeIssue({ ...one, path: [...path, ...one.path] } as Issue, data));
    }
  }
  if (path[0] === "aims" && path.length > 1)
    return [
      {
        path,
        key: issue.code === "invalid_key",
        field,
        found: issue.code === "invalid_key" ? show(String(path[1])) : found,
        expected: 'the id of a quantity and what it is to be, such as compressionRatio: "10.5"',
      },
    ];
  if (path[0] === "confirmations" && path.length > 1) {
    const badId = issue.code === "invalid_key";
    return [
      {
        path,
        key: badId,
        field,
        found: badId ? show(String(path[1])) : found,
        expected: badId
          ? "the id of a rule, such as caps-drawn-down-evenly"
          : expectedConfirmation(String(path[2])),
      },
    ];
  }
  const { spec, depth } = specAt(path);
  if (issue.code === "custom") {
    const expected = String(
      (issue.params as { expected?: unknown } | undefined)?.expected ?? "another value",
    );
    return [{ path, field, found: `${found}: ${issue.message}`, expected }];
  }
  if (spec !== undefined && path.length <= depth) {
    const near =
      spec.kind === "choice" && typeof valueAt(data, path) === "string"
        ? nearestWord(valueAt(data, path) as string, Object.keys(spec.options))
        : undefined;
    return [
      { path, field, found, expected: expectedOf(spec), ...(near === undefined ? {} : { didYouMean: near }) },
    ];
  }
  if (path.length === 1 && parts.some((part) => part.spec.key === path[0])) {
    return [{ path, field, found, expected: "a group of fields" }];
  }
  if (spec !== undefined)
    return [{ path, field, found, expected: expectedDetail(spec, String(path.at(-1))) }];
  if (path.length === 0) {
    const empty = data === null || data === undefined || data === "";
    return [
      {
        path,
        field,
        found: empty ? "an empty file" : found,
        expected: "a build file: trialfit, name and the parts",
      },
    ];
  }
  const top: Readonly<Record<string, string>> = {
    aims: "quantities by their id, each with what it is to be",
    confirmations: "entries by the id of the rule that asks for them",
    trialfit: 'the version of the build file format: trialfit: "1"',
    name: "a name for the build, at most 200 characters",
    $schema: "the address of a schema, as a text",
  };
  return [{ path, field, found, expected: top[field] ?? "another entry" }];
}
