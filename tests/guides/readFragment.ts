import { type RuleFile, ruleFiles } from "@trialfit/rules";
import {
  applySet,
  checkRule,
  evaluate,
  formatProblem,
  printRule,
  readBuildText,
  readPartsListText,
  readSetText,
  reviewRule,
} from "trialfit";
import { changedBuild } from "./changedBuild.ts";
import { dataOf, isData } from "./data.ts";

/** A rule of the catalog that asks a person, to hold a shown piece of such a rule. */
function askingRule(): RuleFile {
  const found = ruleFiles.find((rule) => rule.confirm !== undefined);
  if (found === undefined) throw new Error("no rule of the catalog asks a person");
  return found;
}

const errors = (problems: ReturnType<typeof checkRule>) =>
  problems.filter(({ weight }) => weight === "error").map(formatProblem);

/**
 * What a block of YAML is — a build, a set, a rule or a piece of one — and what is wrong with it, found by the
 * readers that users have. A piece is put over something whole and read with it.
 * @param build the build of the page, over which pieces of builds are put
 */
export async function readFragment(text: string, name: string, build: string) {
  const data = dataOf(text);
  if (!isData(data)) throw new Error(`${name}: no YAML of keys and values`);
  if ("trialfit" in data) return { kind: "build", problems: await problemsOf(() => judged(text, name)) };
  if ("part" in data && "parts" in data)
    return { kind: "parts list", problems: await problemsOf(() => void readPartsListText(text, name)) };
  if ("extends" in data) return { kind: "set", problems: await problemsOf(() => departing(text, name)) };
  if ("id" in data) {
    const { problems, score } = reviewRule(text, name);
    const unnoticed = score === undefined ? 0 : score.made - score.caught;
    return {
      kind: "rule",
      problems: [...errors(problems), ...(unnoticed > 0 ? [`${unnoticed} slips unnoticed`] : [])],
    };
  }
  if ("requires" in data) {
    const asking = askingRule();
    const whole = printRule({ ...asking, ...data } as RuleFile);
    return { kind: "piece of a rule", problems: errors(checkRule(whole, `${asking.id}.yaml`)) };
  }
  return {
    kind: "piece of a build",
    problems: await problemsOf(() => judged(changedBuild(build, text), name)),
  };
}

/** @throws Error for a build that cannot be read, or of which nothing can be said. */
async function judged(text: string, name: string): Promise<void> {
  const { summary } = await evaluate(readBuildText(text, name), { stage: "choose" });
  if (summary.holds + summary.fails + summary.open === 0) throw new Error(`${name}: nothing can be judged`);
}

/** @throws Error for a set that cannot be read, or that departs from nothing. */
function departing(text: string, name: string): void {
  if (applySet([readSetText(text, name)]).departures.length === 0)
    throw new Error(`${name}: changes nothing`);
}

/** What is wrong with something that a reader refuses. */
export async function problemsOf(read: () => void | Promise<void>): Promise<readonly string[]> {
  try {
    await read();
    return [];
  } catch (error) {
    return [error instanceof Error ? error.message : String(error)];
  }
}
