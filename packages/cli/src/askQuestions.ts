import { createInterface } from "node:readline/promises";
import type { Readable, Writable } from "node:stream";
import {
  type Answers,
  type Question,
  type QuestionKey,
  questionKeys,
  questions,
  refuseAnswer,
} from "trialfit";
import { UsageError } from "./UsageError.ts";

function promptOf({ ask, options, several, needed }: Question): string {
  const words = options === undefined ? "" : `\n  ${Object.keys(options).join(", ")}`;
  const manner = [several === true ? "several with commas" : "", needed === true ? "" : "empty: later"];
  const hint = manner.filter((one) => one !== "").join("; ");
  return `${ask}${hint === "" ? "" : ` (${hint})`}${words}\n> `;
}

/**
 * Asks the questions of a new rule on the terminal, each until its answer can be taken.
 * @throws UsageError when the input ends before the last question
 */
export async function askQuestions(
  input: Readable = process.stdin,
  output: Writable = process.stdout,
): Promise<Answers> {
  const terminal = createInterface({ input, output });
  const ended = new Promise<never>((_, reject) => {
    terminal.once("close", () => reject(new UsageError("the answers ended before the last question")));
  });
  const answers: Partial<Record<QuestionKey, string>> = {};
  const askFor = async (key: QuestionKey): Promise<void> => {
    const answer = (await Promise.race([terminal.question(promptOf(questions[key])), ended])).trim();
    const refusal = refuseAnswer(key, answer, answers);
    if (refusal !== undefined) {
      output.write(`  ${refusal}\n`);
      return askFor(key);
    }
    if (answer !== "") answers[key] = answer;
  };
  for (const key of questionKeys) {
    const { asked } = questions[key];
    if (asked === undefined || asked(answers)) await askFor(key);
  }
  ended.catch(() => undefined);
  terminal.close();
  return answers;
}
