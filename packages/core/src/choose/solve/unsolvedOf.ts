import { fieldLabel } from "../../read/fieldCatalog.ts";
import { fromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { joinDimension } from "../../units/splitDimension.ts";
import type { Conflict } from "./findConflicts.ts";
import type { Solution, SolvedConflict } from "./Solution.ts";
import type { Solved } from "./Solved.ts";
import { solvedAim } from "./solvedAim.ts";
import { solvedFields, textOf } from "./solvedFields.ts";
import type { Wanted } from "./Wanted.ts";

type Unsolved = Omit<Extract<Solution, { state: "conflict" }>, "build">;

function stepText({ step, unit }: Wanted): string {
  const number = String(Number(fromSi(step, unitOf(unit)).toPrecision(6)));
  return joinDimension({ number, unit, tolerance: "", word: "" });
}

function conflictOf({ aims, alone }: Conflict, wanted: readonly Wanted[]): SolvedConflict {
  const ids = aims.map(({ id }) => id);
  if (alone === undefined) return { aims: ids };
  const ends = alone.ends.map(({ index, end }) => {
    const one = wanted[index]!;
    return { path: one.path, label: fieldLabel(one.path), end, text: textOf(one, one[end]) };
  });
  const nearest = alone.nearest === undefined ? {} : { nearest: alone.nearest };
  return { aims: ids, alone: { ...nearest, ends } };
}

/** What keeps aims from being met, as plain data with the words of the build file. */
export function unsolvedOf(
  solved: Extract<Solved, { state: "conflict" }>,
  wanted: readonly Wanted[],
): Unsolved {
  const { conflict, conflicts, bySteps, stepless, exact, sizes, reached } = solved;
  return {
    state: "conflict",
    conflict: conflict.map(({ id }) => id),
    conflicts: conflicts.map((one) => conflictOf(one, wanted)),
    bySteps,
    stepless: stepless.map((index) => {
      const one = wanted[index]!;
      return { path: one.path, label: fieldLabel(one.path), step: stepText(one) };
    }),
    fields: solvedFields(wanted, exact, sizes),
    aims: reached.map(solvedAim),
  };
}
