import { nearestWord } from "../../read/nearestWord.ts";
import { InputError, type Problem } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import { showValue } from "../steps/showValue.ts";
import { type Answers, type QuestionKey, questionKeys, questions, refuseAnswer } from "./questions.ts";

function textOf(value: unknown): string | undefined {
  if (Array.isArray(value) && value.every((one) => typeof one === "string")) return value.join(", ");
  return typeof value === "string" ? value.trim() : undefined;
}

/**
 * Reads the answers for a new rule from a text: one `question: answer` a line, lists as lists or with commas.
 * @throws InputError with every answer that cannot be taken, and every one that is needed and not there
 */
export function readAnswers(text: string, file: string): Answers {
  const source = parseSource(text, file);
  const data = (typeof source.data === "object" && source.data !== null ? source.data : {}) as Record<
    string,
    unknown
  >;
  const problems: Problem[] = [];
  const answers: Partial<Record<QuestionKey, string>> = {};
  const report = (key: string, found: string, expected: string, didYouMean?: string) => {
    const place = source.locate([key], true);
    const problem = { file, line: place?.line, column: place?.column, field: key, found, expected };
    problems.push(didYouMean === undefined ? problem : { ...problem, didYouMean });
  };
  for (const key of Object.keys(data).filter((one) => !questionKeys.includes(one as QuestionKey)))
    report(
      key,
      `the unknown key "${key}"`,
      `one of ${questionKeys.join(", ")}`,
      nearestWord(key, questionKeys),
    );
  for (const key of questionKeys) {
    const { ask, needed, asked } = questions[key];
    const relevant = asked === undefined || asked(answers);
    if (data[key] === undefined) {
      if (needed === true && relevant) report(key, `no answer to "${key}"`, ask);
      continue;
    }
    const answer = textOf(data[key]);
    const refusal =
      answer === undefined ? `${showValue(data[key])} is no text` : refuseAnswer(key, answer, answers);
    if (refusal !== undefined) report(key, showValue(data[key]), `another answer: ${refusal}`);
    else if (answer !== "" && relevant) answers[key] = answer!;
  }
  if (problems.length > 0) throw new InputError(problems);
  return answers;
}
