import { countOf, formatProblem, type Problem } from "trialfit";

/** Says on the error output what is wrong with the input, a line each. */
export function printProblems(problems: readonly Problem[]): void {
  if (problems.length === 0) return;
  const count = countOf(problems.length, "problem");
  process.stderr.write(
    `${problems.map(formatProblem).join("\n")}\n${count} in the input; nothing was evaluated from it.\n`,
  );
}
