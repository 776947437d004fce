import type { Build } from "../read/Build.ts";
import type { AssumedValue, FieldSpec } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { readDimension } from "../read/readDimension.ts";

type Values = ReadonlyMap<string, FieldValue>;

function readDefault(spec: FieldSpec, { value }: AssumedValue): FieldValue | undefined {
  if (spec.kind === "dimension")
    return readDimension({ value, provenance: "assumed" }, spec, "assumed").value;
  return spec.kind === "choice" ? { kind: "choice", value, provenance: "assumed" } : undefined;
}

type Read = Readonly<Record<string, FieldValue>>;

/** Every default, read once: by the word that it follows, or under no word. */
const defaults: ReadonlyMap<string, Read> = new Map(
  [...fields].flatMap(([path, { spec }]): [string, Read][] => {
    const { assumed } = spec;
    if (assumed === undefined) return [];
    const all = "value" in assumed ? { "": assumed } : assumed.values;
    const read = Object.entries(all).flatMap(([word, one]) => {
      const value = readDefault(spec, one);
      return value === undefined ? [] : [[word, value] as const];
    });
    return [[path, Object.fromEntries(read)]];
  }),
);

/** Whether the default of a field follows a word. */
const followsWord = (path: string): boolean => "byChoice" in fields.get(path)!.spec.assumed!;

/** Fields that have a default; those that follow a word last, since a word may be a default itself. */
const inOrder: readonly string[] = [...defaults.keys()].sort(
  (a, b) => Number(followsWord(a)) - Number(followsWord(b)),
);

/** The word under which a field's default stands, and undefined where it has none for these values. */
function wordOf(path: string, values: Values): string | undefined {
  const assumed = fields.get(path)?.spec.assumed;
  if (assumed === undefined || "value" in assumed) return assumed === undefined ? undefined : "";
  const choice = values.get(assumed.byChoice);
  return choice?.kind === "choice" ? choice.value : undefined;
}

/** Why a field has the default that it has, for these values. */
export function reasonOfDefault(path: string, values: Values): string | undefined {
  const assumed = fields.get(path)?.spec.assumed;
  if (assumed === undefined || "value" in assumed) return assumed?.because;
  return assumed.values[wordOf(path, values) ?? ""]?.because;
}

/**
 * The values of a build, with the documented default of every field that was left out and has one.
 */
export function withDefaults(build: Build): Values {
  const values = new Map(build.values);
  for (const path of inOrder) {
    if (build.values.has(path)) continue;
    const unless = fields.get(path)?.spec.assumed?.unless ?? [];
    const value = defaults.get(path)?.[wordOf(path, values) ?? "\u0000"];
    if (value !== undefined && !unless.some((other) => build.values.has(other))) values.set(path, value);
  }
  return values;
}
