import { fieldLabel, fields } from "../../read/fieldCatalog.ts";
import type { Range } from "./findRanges.ts";
import type { SolvedField, SolvedRange } from "./Solution.ts";
import type { Wanted } from "./Wanted.ts";
import { writeSize } from "./writeSize.ts";

/** A size of a wanted dimension as a build file writes it. */
export function textOf({ path, unit, place }: Wanted, size: number): string {
  return writeSize(size, unit, fields.get(path)!.spec, place);
}

/** The wanted dimensions with sizes that were found. */
export function solvedFields(
  wanted: readonly Wanted[],
  exact: readonly number[],
  sizes: readonly number[],
): readonly SolvedField[] {
  return wanted.map((one, index) => ({
    path: one.path,
    label: fieldLabel(one.path),
    exact: exact[index]!,
    value: sizes[index]!,
    unit: one.unit,
    text: textOf(one, sizes[index]!),
  }));
}

/** A wanted dimension with where it may lie. */
export function solvedRange(wanted: Wanted, { low, high }: Range): SolvedRange {
  const { path, unit } = wanted;
  const texts = { lowText: textOf(wanted, low), highText: textOf(wanted, high) };
  return { path, label: fieldLabel(path), low, high, unit, ...texts };
}
