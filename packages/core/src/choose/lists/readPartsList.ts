import { countOf } from "../../read/countOf.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import type { ListedPart, PartsList } from "./PartsList.ts";
import { type Flaw, listLimits, type RawList } from "./RawList.ts";
import type { RowReader } from "./RowReader.ts";
import { type ListHead, readListHead } from "./readListHead.ts";
import { readListRow } from "./readListRow.ts";

/** As many flaws as are named: a column without its unit is wrong in every row. */
const NAMED = 50;

function refuse({ file }: RawList, flaws: readonly Flaw[]): never {
  const problems = flaws
    .map(({ place, ...rest }): Problem => ({ file, ...place, ...rest }))
    .sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0));
  const more = problems.length - NAMED;
  throw new InputError(
    more <= 0
      ? problems
      : [
          ...problems.slice(0, NAMED),
          {
            file,
            line: problems[NAMED]!.line,
            column: problems[NAMED]!.column,
            field: "",
            found: `${countOf(more, "more problem")} from here on`,
            expected: "the ones above mended first: one slip in a column stands in every row",
          },
        ],
  );
}

type Money = RowReader["money"];

/** Every part of the list; an id that stands twice is a flaw. */
function readParts(list: RawList, head: ListHead, flaws: Flaw[], money: Money): readonly ListedPart[] {
  const lines = new Map<string, number>();
  return list.rows.flatMap((row) => {
    const cells = new Map([...row.cells].filter(([name]) => !head.unread.has(name)));
    const part = readListRow({ list, head, row: { ...row, cells }, flaws, money });
    if (part === undefined) return [];
    const before = lines.get(part.id);
    if (before === undefined) lines.set(part.id, part.line);
    else
      flaws.push({
        place: row.cells.get("id")!.place(),
        field: `row ${row.number}, column "id"`,
        found: `"${part.id}" a second time (first in line ${before})`,
        expected: "each id once",
      });
    return [part];
  });
}

/**
 * Reads what was taken apart, through the schemas that read a build file.
 * @throws InputError with the problems, the first fifty of many
 */
export function readPartsList(list: RawList): PartsList {
  const flaws: Flaw[] = [...list.flaws];
  const head = readListHead(list, flaws);
  if (head === undefined) return refuse(list, flaws);
  if ((list.rows.length === 0 && list.flaws.length === 0) || list.rows.length > listLimits.parts)
    flaws.push({
      place: { line: 1, column: 1 },
      field: "",
      found: countOf(list.rows.length, "part"),
      expected: `1 to ${listLimits.parts} parts`,
    });
  const money: Money = { currency: head.currency };
  const parts = list.rows.length > listLimits.parts ? [] : readParts(list, head, flaws, money);
  if (flaws.length > 0) return refuse(list, flaws);
  const { part, about, keep } = head;
  const { currency } = money;
  return {
    file: list.file,
    part: part.spec,
    ...(about === undefined ? {} : { about }),
    ...(currency === undefined ? {} : { currency }),
    keep: keep.map((name) => `${part.spec.key}.${name}`),
    parts,
  };
}
