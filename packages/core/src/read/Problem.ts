/** One thing that is wrong with an input file. */
export interface Problem {
  readonly file: string;
  /** From 1; undefined where the input was not a text. */
  readonly line: number | undefined;
  readonly column: number | undefined;
  /** Path of the field: `block.bore`. Empty for the file as a whole. */
  readonly field: string;
  readonly found: string;
  readonly expected: string;
  /** The nearest known word, when the found one is unknown. */
  readonly didYouMean?: string;
}

/** A sentence that ends once, whatever ends it. */
const ended = (text: string) => (/[.?!]$/.test(text) ? text : `${text}.`);

/** What is wrong, wherever it stands: found, expected. */
export function describeProblem({
  found,
  expected,
  didYouMean,
}: Pick<Problem, "found" | "expected" | "didYouMean">): string {
  return didYouMean === undefined
    ? ended(`found ${found}; expected ${expected}`)
    : ended(`found ${found}. Did you mean "${didYouMean}"? Expected ${expected}`);
}

/** One line for people: place, field, found, expected. */
export function formatProblem(problem: Problem): string {
  const place =
    problem.line === undefined ? problem.file : `${problem.file}:${problem.line}:${problem.column}`;
  const field = problem.field === "" ? "" : ` ${problem.field}:`;
  return `${place}:${field} ${describeProblem(problem)}`;
}

/** Thrown when an input cannot be read; carries every problem found, not only the first. */
export class InputError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map(formatProblem).join("\n"));
    this.name = "InputError";
    this.problems = problems;
  }
}
