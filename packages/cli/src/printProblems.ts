import { formatProblem, type Problem } from "trialfit";
import type { Format } from "./output.ts";

/** Prints what is wrong with the input: for people on the error output, for programs as data on the standard output. */
export function printProblems(problems: readonly Problem[], format: Format): void {
  if (problems.length === 0) return;
  if (format === "json")
    process.stdout.write(
      `${JSON.stringify({ format: "trialfit-problems", formatVersion: 1, problems }, null, 2)}\n`,
    );
  const count = problems.length === 1 ? "1 problem" : `${problems.length} problems`;
  process.stderr.write(
    `${problems.map(formatProblem).join("\n")}\n${count} in the input; nothing was evaluated from it.\n`,
  );
}
