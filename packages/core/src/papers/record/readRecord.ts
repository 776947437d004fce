import * as z from "zod/mini";
import { BUILD_FORMAT } from "../../read/buildSchema.ts";
import { provenances } from "../../read/FieldSpec.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { InputError } from "../../read/Problem.ts";
import { signWord } from "../../read/signWord.ts";
import { fromSi, intervalFromSi } from "../../units/convert.ts";
import { findUnit } from "../../units/findUnit.ts";
import { joinDimension } from "../../units/splitDimension.ts";
import { RECORD_FORMAT, type ReadRecord } from "./EngineRecord.ts";

/** Longest record that is read: a report with every verdict is one or two million characters. */
export const MAX_RECORD_LENGTH = 16 * 1024 * 1024;

const oldField = z.object({
  path: z.string(),
  text: z.string(),
  provenance: z.enum(provenances),
  unit: z.optional(z.string()),
  nominal: z.optional(z.number()),
  low: z.optional(z.number()),
  high: z.optional(z.number()),
});
type OldField = z.infer<typeof oldField>;

const oldRecord = z.object({
  format: z.literal("trialfit-report"),
  formatVersion: z.literal(1),
  trialfit: z.string(),
  build: z.object({ name: z.string() }),
  fields: z.array(oldField),
  assumptions: z.array(z.object({ path: z.string() })),
});

const record = z.object({
  format: z.literal("trialfit-record"),
  formatVersion: z.literal(RECORD_FORMAT),
  build: z.string(),
});

function refuse(file: string, found: string, expected: string): never {
  throw new InputError([{ file, line: undefined, column: undefined, field: "", found, expected }]);
}

/** Enough figures that the same number is read again. */
const plain = (value: number) => String(Number(value.toPrecision(12)));

/** A dimension of an older record as it is written in a build file: its band as it was. */
function written({ text, unit, nominal, low, high, path }: OldField): string | undefined {
  const spec = fields.get(path)?.spec;
  if (spec?.kind === "count" || unit === undefined) return text;
  const known = findUnit(unit);
  if (known === undefined || nominal === undefined || low === undefined || high === undefined)
    return undefined;
  if (spec?.kind !== "dimension") return undefined;
  const sign = spec.signs !== undefined && nominal < 0 ? -1 : 1;
  const place = spec.places?.find((one) => text.includes(one));
  const [below, above] = [nominal - low, high - nominal].map((size) => plain(intervalFromSi(size, known)));
  const [down, up] = sign === 1 ? [below, above] : [above, below];
  const number = plain(fromSi(spec.signs === undefined ? nominal : Math.abs(nominal), known));
  const word = signWord(spec, sign) ?? place ?? "";
  return joinDimension({ number, unit: known.symbol, word, tolerance: `+${up}/-${down}` });
}

/** A record of version 1 held the values, not the file: it is written anew from them. */
function fromReport({ build, fields: old, assumptions, trialfit }: z.infer<typeof oldRecord>): ReadRecord {
  const assumed = new Set(assumptions.map(({ path }) => path));
  const data: Record<string, unknown> = { trialfit: BUILD_FORMAT, name: build.name };
  const gone: string[] = [];
  let kept = 0;
  for (const field of old) {
    const { path, provenance } = field;
    if (assumed.has(path) || path.endsWith(".place")) continue;
    const spec = fields.get(path)?.spec;
    const entry =
      spec === undefined || spec.kind === "table"
        ? undefined
        : spec.kind === "choice"
          ? field.text
          : written(field);
    if (entry === undefined) {
      gone.push(path);
      continue;
    }
    const [part = "", own] = path.split(".");
    const value = spec?.kind === "dimension" ? { value: entry, provenance } : entry;
    if (own === undefined) data[part] = value;
    else data[part] = { ...(data[part] as object | undefined), [own]: value };
    kept += 1;
  }
  return {
    build: JSON.stringify(data, null, 2),
    migrated: [
      `a record of format 1 (trialfit ${trialfit}), which held the values and not the build file: ${kept} entries are written anew from it`,
      "who measured, when, with what and at which places was not in it: readings stand as one size with its band",
      "confirmations and comments were not in it",
      ...(assumed.size === 0
        ? []
        : [`${assumed.size} entries that were assumed are left out: the defaults of today are taken`]),
      ...(gone.length === 0
        ? []
        : [`not carried over, for lack of a value or of such a field today: ${gone.join(", ")}`]),
    ],
  };
}

/** Whether a text is a record, of whichever version. */
export function isRecord(text: string): boolean {
  return /^\s*\{\s*"format":\s*"trialfit-(record|report)"/.test(text);
}

/**
 * Reads the record of an engine, of this version or of an older one.
 * @throws InputError when it is none, or is of a version that this one does not know
 */
export function readRecord(text: string, file: string): ReadRecord {
  if (text.length > MAX_RECORD_LENGTH)
    refuse(file, `${text.length} characters`, `a record of at most ${MAX_RECORD_LENGTH}`);
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse(file, "text that is not JSON", "the record of an engine");
  }
  const today = record.safeParse(data);
  if (today.success) return { build: today.data.build, migrated: [] };
  const old = oldRecord.safeParse(data);
  if (old.success) return fromReport(old.data);
  const version = z.object({ format: z.string(), formatVersion: z.number() }).safeParse(data);
  if (
    version.success &&
    version.data.format.startsWith("trialfit-rec") &&
    version.data.formatVersion > RECORD_FORMAT
  )
    return refuse(
      file,
      `a record of format ${version.data.formatVersion}`,
      `format ${RECORD_FORMAT} or older: a newer trialfit wrote it`,
    );
  return refuse(file, "JSON that is no record", `the record of an engine, format 1 or ${RECORD_FORMAT}`);
}
