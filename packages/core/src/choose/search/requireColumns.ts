import { InputError, type Problem } from "../../read/Problem.ts";
import { type Aim, aimNames, type Weights } from "./Objective.ts";
import type { Candidate, CandidateKind } from "./SearchSpace.ts";

/** The column of a list that gives what an aim adds up; none for the margin. */
const columns: Readonly<Record<Aim, (keyof Candidate & ("price" | "totalMass" | "leadTime")) | undefined>> = {
  cost: "price",
  margin: undefined,
  mass: "totalMass",
  time: "leadTime",
};

/** As many parts as are named. */
const NAMED = 10;

/**
 * Refuses parts that lack what is compared: nothing is taken for nothing.
 * @throws InputError naming the parts
 */
export function requireColumns(
  kinds: readonly CandidateKind[],
  weights: Weights,
  front: readonly Aim[],
): void {
  const problems = aimNames.flatMap((aim): readonly Problem[] => {
    const column = columns[aim];
    if (column === undefined || (weights[aim] === 0 && !front.includes(aim))) return [];
    return kinds.flatMap(({ candidates }) =>
      candidates
        .filter((one) => one[column] === undefined)
        .map(({ file, line, id }) => ({
          file,
          line,
          column: 1,
          field: `${id}, column "${column}"`,
          found: "nothing",
          expected: `a value for every part: ${aim} is compared`,
        })),
    );
  });
  if (problems.length > 0) throw new InputError(problems.slice(0, NAMED));
}
