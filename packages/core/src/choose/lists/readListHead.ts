import { parts } from "../../read/buildSchema.ts";
import { fieldSpecs } from "../../read/FieldSpec.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import type { Part } from "../../read/part.ts";
import { syntaxOf } from "../../read/syntaxOf.ts";
import { findUnit, sameDimensions, unitOf } from "../../units/findUnit.ts";
import { describeSyntax } from "../../units/parseDimension.ts";
import { CURRENCY, listColumns, measuredColumns } from "./listColumns.ts";
import type { Flaw, RawCell, RawList } from "./RawList.ts";

/** What a list says of all its parts. */
export interface ListHead {
  readonly part: Part;
  readonly about: string | undefined;
  /** Names of fields. */
  readonly keep: readonly string[];
  readonly currency: string | undefined;
  /** Columns whose head is wrong: their cells are not read, since each would be wrong as well. */
  readonly unread: ReadonlySet<string>;
}

const headKeys = ["part", "about", "keep"];
const buyable = parts.filter(({ spec }) => spec.bought !== false);

function near(word: string, known: readonly string[]): { readonly didYouMean?: string } {
  const didYouMean = nearestWord(word, known);
  return didYouMean === undefined ? {} : { didYouMean };
}

function words(cell: RawCell | undefined): readonly string[] {
  const list = Array.isArray(cell?.value) ? cell.value.map(String) : String(cell?.value ?? "").split(",");
  return list.map((word) => word.trim()).filter((word) => word !== "");
}

function readPart(list: RawList, flaws: Flaw[]): Part | undefined {
  const cell = list.head.get("part");
  const known = buyable.map(({ spec }) => spec.key);
  const part = buyable.find(({ spec }) => spec.key === cell?.value);
  if (part === undefined)
    flaws.push({
      place: cell?.place() ?? { line: 1, column: 1 },
      field: "part",
      found: cell === undefined ? "nothing" : `"${String(cell.value)}"`,
      expected: `the part of the build file that the list is of, at its top (in CSV a line such as # part: crankshaft): one of ${known.join(", ")}`,
      ...(cell === undefined ? {} : near(String(cell.value), known)),
    });
  return part;
}

function checkUnit(name: string, unit: string, part: Part): Omit<Flaw, "place" | "field"> | undefined {
  if (name === "price")
    return CURRENCY.test(unit)
      ? undefined
      : { found: `the currency "${unit}"`, expected: "three capital letters (ISO 4217), such as EUR" };
  const schema =
    (measuredColumns as Readonly<Record<string, Part["fields"][string]>>)[name] ?? part.fields[name];
  const spec = schema === undefined ? undefined : fieldSpecs.get(schema);
  if (spec?.kind !== "dimension")
    return { found: `the unit "${unit}"`, expected: "no unit: this is not a number with one" };
  const known = findUnit(unit);
  if (known !== undefined && sameDimensions(known.dimensions, unitOf(spec.unit).dimensions)) return undefined;
  return { found: `the unit "${unit}"`, expected: describeSyntax(syntaxOf(spec)) };
}

/**
 * Reads the head of a list and its column heads.
 * @param flaws what is wrong is added to it
 * @returns undefined when it does not say of which part it is: then nothing in it can be read
 */
export function readListHead(list: RawList, flaws: Flaw[]): ListHead | undefined {
  for (const [key, { place }] of list.head)
    if (!headKeys.includes(key))
      flaws.push({
        place: place(),
        field: key,
        found: `the unknown key "${key}"`,
        expected: `one of ${headKeys.join(", ")}`,
        ...near(key, headKeys),
      });
  const part = readPart(list, flaws);
  if (part === undefined) return undefined;
  const fieldNames = Object.keys(part.fields);
  const keep = words(list.head.get("keep"));
  for (const name of keep)
    if (!fieldNames.includes(name))
      flaws.push({
        place: list.head.get("keep")!.place(),
        field: "keep",
        found: `the unknown field "${name}"`,
        expected: `fields of the part ${part.spec.key}`,
        ...near(name, fieldNames),
      });
  const unread = new Set<string>();
  const refuseColumn = (name: string, flaw: Flaw) => {
    unread.add(name);
    flaws.push(flaw);
  };
  for (const [name, { unit, place }] of list.columns) {
    const known = [...listColumns, ...fieldNames];
    if (!known.includes(name))
      refuseColumn(name, {
        place: place(),
        field: `column "${name}"`,
        found: `the unknown column "${name}"`,
        expected: `${listColumns.join(", ")}, or a field of the part ${part.spec.key} (\`trialfit explain ${part.spec.key}\` lists them)`,
        ...near(name, known),
      });
    else if (unit !== undefined) {
      const flaw = checkUnit(name, unit, part);
      if (flaw !== undefined) refuseColumn(name, { place: place(), field: `column "${name}"`, ...flaw });
    }
  }
  const about = list.head.get("about");
  return {
    part,
    about: about === undefined ? undefined : String(about.value),
    keep,
    currency: list.columns.get("price")?.unit,
    unread,
  };
}
