import { ruleFiles } from "@trialfit/rules";
import {
  describeProblem,
  evaluate,
  fieldLabel,
  InputError,
  type Problem,
  parseSource,
  readBuild,
} from "trialfit";
import { demoFiles } from "../data/demoFiles.ts";
import { prettyView } from "../data/prettyUnits.ts";
import { verdictView } from "../data/verdictView.ts";
import { sentence } from "../data/words.ts";
import { confirmationRule } from "./confirmationRule.ts";
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
  for (const [path, entry] of Object.entries(changes)) setField(data, path, entry);
  try {
    const report = await evaluate(readBuild(data, demo), { rules: [file] });
    return { number, view: prettyView(verdictView(report.verdicts[0]!)) };
  } catch (error) {
    if (error instanceof InputError) return { number, problems: error.problems.map(problemOf) };
    throw error;
  }
}
