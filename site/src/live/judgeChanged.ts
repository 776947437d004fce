import { ruleFiles } from "@trialfit/rules";
import {
  describeProblem,
  evaluate,
  fieldLabel,
  fields,
  InputError,
  type Problem,
  parseSource,
  readBuild,
  syntaxOf,
} from "trialfit";
import { demoFiles } from "../data/demoFiles.ts";
import { prettyView } from "../data/prettyUnits.ts";
import { verdictView } from "../data/verdictView.ts";
import { sentence } from "../data/words.ts";
import { typedWhole } from "../workbench/worker/typedWhole.ts";
import { confirmationRule } from "./confirmationRule.ts";
import { type Entry, writeEntry } from "./Entry.ts";
import type { LiveAnswer, LiveProblem } from "./LiveAnswer.ts";
import type { LiveRequest } from "./LiveRequest.ts";

type Tree = Record<string, unknown>;

/** What a person says they saw: who and when is not asked on a page where nothing is built. */
function confirmation(seen: string): Tree {
  return { seen, by: "reader of this page", on: "2000-01-01", how: "said on this page" };
}

function setField(data: Tree, path: string, text: string | undefined): void {
  const rule = confirmationRule(path);
  const [first = "", second] = rule === undefined ? path.split(".") : ["confirmations", rule];
  const into = second === undefined ? data : ((data[first] ?? {}) as Tree);
  if (second !== undefined) data[first] = into;
  const name = second ?? first;
  if (text === undefined) delete into[name];
  else into[name] = rule === undefined ? text : confirmation(text);
}

/** What the build file says where this stands in the controls: a size typed whole into the box of its number, taken apart. */
function textOf(path: string, entry: Entry | undefined): string | undefined {
  const spec = fields.get(path)?.spec;
  if (entry === undefined || spec?.kind !== "dimension") return entry && writeEntry(entry);
  const { value, unit = "", word = "", tolerance = "" } = entry;
  const whole = typedWhole(
    { form: "pieces", number: value, unit, word, tolerance, about: {} },
    syntaxOf(spec),
  );
  return writeEntry(whole === undefined ? { value } : { ...whole, value: whole.number });
}

const problemOf = (problem: Problem): LiveProblem => ({
  path: problem.field,
  label: problem.field === "" ? "" : fieldLabel(problem.field),
  text: sentence(describeProblem(problem)),
});

/**
 * Judges one rule on a demo build with changes.
 * @throws RangeError when there is no such rule or demo build.
 */
export async function judgeChanged({ number, rule, demo, changes }: LiveRequest): Promise<LiveAnswer> {
  const text = demoFiles.get(demo);
  const file = ruleFiles.find(({ id }) => id === rule);
  if (text === undefined || file === undefined) throw new RangeError(`no rule ${rule} or demo build ${demo}`);
  const data = parseSource(text, demo).data as Tree;
  for (const [path, entry] of Object.entries(changes)) setField(data, path, textOf(path, entry));
  try {
    const report = await evaluate(readBuild(data, demo), { rules: [file] });
    return { number, view: prettyView(verdictView(report.verdicts[0]!)) };
  } catch (error) {
    if (error instanceof InputError) return { number, problems: error.problems.map(problemOf) };
    throw error;
  }
}
