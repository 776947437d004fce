import type { RuleFile, Standing } from "@trialfit/rules";
import { readRule } from "../../judge/compileRule.ts";
import { FILL_IN } from "../fillIn.ts";
import { printExample, quoted } from "../printExample.ts";
import type { RuleContext } from "../RuleProblem.ts";
import { type RuleReview, reviewRule } from "../reviewRule.ts";
import { ruleShapes } from "../steps/ruleShapes.ts";
import { firstExamples } from "./firstExamples.ts";
import { type Answers, comparisons, type Must, type QuestionKey, questions, splitList } from "./questions.ts";

/** A new rule file, where it belongs, and what is left to be filled in. */
export interface Scaffold {
  /** Path below the folder of the rules: `rods/my-rule.yaml`. */
  readonly path: string;
  readonly text: string;
  readonly review: RuleReview;
}

/** Stands where an id belongs and was not given: no part and no source is called so. */
const LEFT_ID = "fill-in";

type Data = Omit<RuleFile, "examples">;

function orLeft(answers: Answers, key: QuestionKey): string {
  return answers[key] ?? `${FILL_IN} ${questions[key].ask}.`;
}

/** The word of an answer that must be there. @throws RangeError when it is not */
function chosen<Word extends string>(answers: Answers, key: QuestionKey): Word {
  const word = answers[key];
  if (word === undefined) throw new RangeError(`a new rule needs an answer to "${key}"`);
  return word as Word;
}

function limitsOf(answers: Answers, name: string): Data["limits"] {
  const value = orLeft(answers, "limit");
  const standing = chosen<Standing>(answers, "standing");
  const range: [string, string] = [orLeft(answers, "lowest"), orLeft(answers, "highest")];
  const movedBy = [...splitList(answers.movedBy ?? "")];
  return {
    [name]: { value, range, standing, movedBy: movedBy.length > 0 ? movedBy : [orLeft(answers, "movedBy")] },
  };
}

/** The rule as the answers give it; what they leave open says so in its place. */
function dataOf(answers: Answers): Data {
  const must = (answers.must ?? "at least") as Must;
  const ofWords = must.endsWith(" of");
  const name = must === "at least" || must === "more than" ? "least" : "most";
  const words = [...splitList(answers.words ?? orLeft(answers, "words").replace(/,/g, ";"))];
  const fact = orLeft(answers, "fact");
  return {
    id: chosen(answers, "id"),
    title: orLeft(answers, "title").slice(0, 120),
    system: chosen(answers, "system"),
    parts: [...splitList(answers.parts ?? LEFT_ID)],
    stages: splitList(chosen(answers, "stages")) as RuleFile["stages"],
    requires: { fact, operator: comparisons[must], value: ofWords ? words : { fact: `limit.${name}` } },
    ...(ofWords ? {} : { limits: limitsOf(answers, name) }),
    otherwise: {
      work: chosen(answers, "work"),
      weight: chosen(answers, "weight"),
      do: orLeft(answers, "do"),
    },
    because: orLeft(answers, "because"),
    ...(answers.caution === undefined ? {} : { caution: answers.caution }),
    sources: [{ id: answers.source ?? LEFT_ID }],
  };
}

/** The scaffold keeps a fact and a limit apart: without either there is nothing to try. */
function examplesOf(data: Data, answers: Answers): RuleFile["examples"] {
  const file = { ...data, examples: [] } as unknown as RuleFile;
  if (answers.fact !== undefined && readRule(file).issues.length === 0)
    return [...firstExamples(file, answers.fact, answers.limit)];
  return [
    { name: `${FILL_IN} just inside the limit, with its values under given.`, given: {}, verdict: "holds" },
    { name: "not known yet", given: {}, verdict: "unknown" },
  ];
}

function comment(path: readonly string[]): string {
  const description = ruleShapes.descriptionAt(path);
  return description === undefined ? "" : `# ${description}\n`;
}

const list = (words: readonly string[]) => `[${words.map(quoted).join(", ")}]`;

function printLimits(limits: Data["limits"]): string {
  if (limits === undefined) return "";
  const printed = Object.entries(limits).map(
    ([name, { value, range, standing, movedBy }]) =>
      `  ${name}:\n    value: ${quoted(value)}\n    # ${ruleShapes.descriptionAt(["limits", name, "range"])}\n    range: ${list(range)}\n    # ${ruleShapes.descriptionAt(["limits", name, "standing"])}\n    standing: ${standing}\n    # ${ruleShapes.descriptionAt(["limits", name, "movedBy"])}\n    movedBy: ${list(movedBy)}\n`,
  );
  return `${comment(["limits"])}limits:\n${printed.join("")}`;
}

function printRequires(requires: Data["requires"]): string {
  const { fact, operator, value } = requires as {
    fact: string;
    operator: string;
    value: string[] | { fact: string };
  };
  const right = Array.isArray(value) ? list(value) : `{ fact: ${value.fact} }`;
  return `requires:\n  fact: ${quoted(fact)}\n  operator: ${operator}\n  value: ${right}\n`;
}

function print(data: Data, examples: RuleFile["examples"]): string {
  const { work, weight, do: remedy } = data.otherwise;
  const lines = [
    `${comment(["id"])}id: ${data.id}\n`,
    `${comment(["title"])}title: ${quoted(data.title)}\n`,
    `${comment(["system"])}system: ${data.system}\n`,
    `${comment(["parts"])}parts: ${list(data.parts)}\n`,
    `${comment(["stages"])}stages: ${list(data.stages)}\n`,
    `${comment(["when"])}# when: { fact: use, operator: in, value: [street, circuit] }\n`,
    `${comment(["requires"])}${printRequires(data.requires)}`,
    printLimits(data.limits),
    `otherwise:\n  work: ${work}\n  weight: ${weight}\n  # ${ruleShapes.descriptionAt(["otherwise", "do"])}\n  do: ${quoted(remedy)}\n`,
    `${comment(["because"])}because: ${quoted(data.because)}\n`,
    `${comment(["caution"])}${data.caution === undefined ? "# caution: Follow the part maker's instructions.\n" : `caution: ${quoted(data.caution)}\n`}`,
    `${comment(["disputed"])}# disputed: Some hold …; others …\n`,
    `${comment(["sources"])}sources:\n  - { id: ${data.sources[0]!.id} }\n`,
    `${comment(["examples"])}examples:\n${examples.map(printExample).join("")}`,
  ];
  return `# yaml-language-server: $schema=../rule.schema.json\n${lines.join("")}`;
}

/**
 * A new rule file from what its author answered. It has the form of a rule; every place that was not answered says
 * what belongs there, and the checks refuse the file until it is filled in.
 * @throws RangeError when an answer is missing without which there is no file
 */
export function scaffoldRule(answers: Answers, context?: RuleContext): Scaffold {
  const data = dataOf(answers);
  const path = `${data.system}/${data.id}.yaml`;
  const text = print(data, examplesOf(data, answers));
  return { path, text, review: reviewRule(text, path, context) };
}
