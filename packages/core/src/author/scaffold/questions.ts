import { standings, systems, weights, works } from "@trialfit/rules";
import { factNames, factType } from "../../judge/factCatalog.ts";
import { parts } from "../../read/buildSchema.ts";
import { stages } from "../../read/FieldSpec.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import { DimensionError, parseDimension } from "../../units/parseDimension.ts";

/** What the author of a new rule is asked, in this order. */
export const questionKeys = [
  "id",
  "system",
  "title",
  "parts",
  "stages",
  "fact",
  "must",
  "limit",
  "words",
  "lowest",
  "highest",
  "standing",
  "movedBy",
  "source",
  "work",
  "weight",
  "do",
  "because",
  "caution",
] as const;
export type QuestionKey = (typeof questionKeys)[number];

/** Answers as they were typed; a list is separated by commas. What is not there is left to fill in. */
export type Answers = Readonly<Partial<Record<QuestionKey, string>>>;

export interface Question {
  readonly ask: string;
  /** The words that can be answered. */
  readonly options?: Readonly<Record<string, string>>;
  /** True where several can be given, separated by commas. */
  readonly several?: boolean;
  /** Without this answer there is no file to write. */
  readonly needed?: boolean;
  /** Whether it is asked after these answers; absent: always. */
  readonly asked?: (answers: Answers) => boolean;
  /** What is wrong with an answer, or undefined. */
  readonly refuse?: (answer: string, answers: Answers) => string | undefined;
}

/** How a number, or a word, is compared: the words of the question, and the operator. */
export const comparisons = {
  "at least": "greaterThanInclusive",
  "more than": "greaterThan",
  "at most": "lessThanInclusive",
  "less than": "lessThan",
  "one of": "in",
  "none of": "notIn",
} as const;
export type Must = keyof typeof comparisons;

function typeOf({ fact }: Answers) {
  return fact === undefined ? undefined : factType(fact);
}

const isNumber = (answers: Answers) => typeOf(answers)?.kind !== "word";
const isWord = (answers: Answers) => typeOf(answers)?.kind === "word";

function refuseNumber(answer: string, answers: Answers): string | undefined {
  const type = typeOf(answers);
  if (type?.kind !== "number") return undefined;
  try {
    parseDimension(answer, { unit: type.unit });
    return undefined;
  } catch (error) {
    if (!(error instanceof DimensionError)) throw error;
    return `${error.message}; expected ${error.expected}`;
  }
}

function refuseFact(answer: string): string | undefined {
  if (factType(answer) !== undefined) return undefined;
  const near = nearestWord(answer, factNames());
  const found = factNames().filter((name) => name.toLowerCase().includes(answer.toLowerCase()));
  const help =
    near !== undefined
      ? `did you mean "${near}"?`
      : found.length > 0
        ? `these have it in their name: ${found.slice(0, 12).join(", ")}`
        : "type a part of its name, such as clearance, to see which there are";
  return `no field or quantity is called "${answer}"; ${help}`;
}

function refuseWords(answer: string, answers: Answers): string | undefined {
  const type = typeOf(answers);
  const options = type?.kind === "word" ? type.options : [];
  const wrong = splitList(answer).find((word) => !options.includes(word));
  return wrong === undefined ? undefined : `"${wrong}" is none of ${options.join(", ")}`;
}

/** The entries of a list that was typed with commas. */
export function splitList(text: string): readonly string[] {
  return text
    .split(",")
    .map((one) => one.trim())
    .filter((one) => one !== "");
}

const named = (keys: readonly string[]) => Object.fromEntries(keys.map((key) => [key, ""]));

export const questions: Readonly<Record<QuestionKey, Question>> = {
  id: {
    ask: "Id of the rule, words in small letters joined by hyphens (it becomes the file's name)",
    needed: true,
    refuse: (answer) =>
      /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/.test(answer)
        ? undefined
        : "not words in small letters joined by hyphens",
  },
  system: { ask: "System of the engine (it is the file's folder)", options: systems, needed: true },
  title: { ask: "What must hold, as a sentence without its full stop" },
  parts: {
    ask: "Parts that it is about",
    options: Object.fromEntries(parts.map(({ spec }) => [spec.id, spec.label])),
    several: true,
  },
  stages: { ask: "Stages at which it can be judged", options: named(stages), several: true, needed: true },
  fact: {
    ask: "Field or quantity that is compared, such as block.bore or deckClearance (a part of its name lists them)",
    refuse: refuseFact,
  },
  must: {
    ask: "It must be",
    needed: true,
    asked: ({ fact }) => fact !== undefined,
    options: named(Object.keys(comparisons)),
    refuse: (answer, answers) =>
      answer.endsWith(" of") === isWord(answers)
        ? undefined
        : `${answers.fact ?? "it"} is a ${typeOf(answers)?.kind ?? "number"}`,
  },
  limit: { ask: "Limit, with its unit, such as 0.8 mm", asked: isNumber, refuse: refuseNumber },
  words: { ask: "Words", several: true, asked: isWord, refuse: refuseWords },
  lowest: { ask: "Lowest limit that the trade uses", asked: isNumber, refuse: refuseNumber },
  highest: { ask: "Highest limit that the trade uses", asked: isNumber, refuse: refuseNumber },
  standing: { ask: "How well founded the limit is", options: standings, needed: true, asked: isNumber },
  movedBy: { ask: "What moves the limit: use, material, boost", several: true, asked: isNumber },
  source: { ask: "Source: an id of rules/sources.yaml, such as common-practice" },
  work: { ask: "Kind of work when it fails", options: works, needed: true },
  weight: { ask: "How much it weighs", options: weights, needed: true },
  do: { ask: "What to do when it fails ({name} prints the value of a quantity or field)" },
  because: { ask: "Why it must hold" },
  caution: { ask: "What can hurt somebody at this work, and whose instructions come first (empty: nothing)" },
};

/** What is wrong with an answer, or undefined. An empty answer leaves the place to be filled in. */
export function refuseAnswer(key: QuestionKey, answer: string, answers: Answers): string | undefined {
  const { options, several, needed, refuse } = questions[key];
  if (answer === "") return needed === true ? "an answer is needed here" : undefined;
  if (options !== undefined) {
    const known = Object.keys(options);
    const wrong = (several === true ? splitList(answer) : [answer]).find((word) => !known.includes(word));
    if (wrong !== undefined) {
      const near = nearestWord(wrong, known);
      const hint = near === undefined ? "" : `; did you mean "${near}"?`;
      return `"${wrong}" is none of ${known.join(", ")}${hint}`;
    }
  }
  return refuse?.(answer, answers);
}
