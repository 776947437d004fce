import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type ArgsDef, defineCommand } from "citty";
import { formatProblem, InputError, readAnswers, scaffoldRule } from "trialfit";
import { askQuestions } from "../../askQuestions.ts";
import { readInput } from "../../readInput.ts";
import { refuseUnknownOptions } from "../../refuseUnknownOptions.ts";
import { UsageError } from "../../UsageError.ts";

const args = {
  answers: {
    type: "string",
    description: "File with the answers (YAML, one `question: answer` a line); absent: asked on the terminal",
    valueHint: "FILE",
  },
  folder: {
    type: "string",
    default: "rules",
    description: "Folder of the rules; the file goes into the folder of its system in it",
    valueHint: "FOLDER",
  },
} as const satisfies ArgsDef;

/** Writes a file that is not there yet. */
async function writeNew(path: string, text: string): Promise<void> {
  await mkdir(dirname(path), { recursive: true });
  try {
    await writeFile(path, text, { flag: "wx" });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== "EEXIST") throw error;
    const found = "a file that is there already; it was left as it is";
    throw new InputError([
      { file: path, line: undefined, column: undefined, field: "", found, expected: "an id that is free" },
    ]);
  }
}

/** `trialfit rule new` */
export const newRule = defineCommand({
  meta: { name: "new", description: "Begin a rule file: asks what it needs, writes it, says what is left" },
  args,
  run: async ({ args: { answers: file, folder }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    if (file === undefined && process.stdin.isTTY !== true)
      throw new UsageError("rule new asks on a terminal; without one, give --answers FILE");
    const answers =
      file === undefined
        ? await askQuestions()
        : readAnswers(await readInput(file, "a file of answers"), file === "-" ? "standard input" : file);
    const { path, text, review } = scaffoldRule(answers);
    const target = join(folder, path);
    await writeNew(target, text);
    const left = review.problems.map((problem) => formatProblem({ ...problem, file: target }));
    process.stdout.write(`Written: ${target}\n`);
    process.stdout.write(
      left.length === 0
        ? "Nothing is left to fill in. Read it through: the examples say what the rule says now.\n"
        : `Left to fill in or to look at:\n${left.join("\n")}\n`,
    );
    process.stdout.write(`Then: npx trialfit rule check ${target}\n`);
  },
});
