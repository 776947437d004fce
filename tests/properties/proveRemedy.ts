import { type RuleFile, ruleFiles } from "@trialfit/rules";
import {
  type Build,
  evaluate,
  type FindingRemedies,
  type NoRemedy,
  type Remedy,
  type Report,
  type SizeChange,
  tryRule,
  type VerdictWord,
  withField,
} from "trialfit";
import { Ladder } from "../../packages/core/src/choose/remedy/Ladder.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";

/** Rungs up to which every smaller change is tried, too. */
const SCANNED = 12;

const rules = new Map<string, RuleFile>(ruleFiles.map((file) => [file.id, file]));

/** A build with a change made, as whoever makes it would enter it; on another rung of the same ladder if given. */
export function withChange(build: Build, change: SizeChange, rung = change.steps): Build {
  if (rung === 0) return build;
  const ladder = new Ladder(withDefaults(build), change.path, change.to > change.from ? 1 : -1);
  const text = rung === change.steps ? change.text : ladder.textAt(rung);
  return text === undefined
    ? { ...build, values: new Map(build.values).set(change.path, ladder.at(rung)) }
    : withField(build, change.path, text);
}

const wordsOf = (report: Report): ReadonlyMap<string, VerdictWord> =>
  new Map(report.verdicts.map(({ rule, verdict }) => [rule, verdict]));

async function wordWith(build: Build, change: SizeChange, rung: number, rule: string): Promise<VerdictWord> {
  return (await tryRule(withChange(build, change, rung), rules.get(rule)!)).verdict.verdict;
}

/** Rules that stand worse after a change than before: what held no longer does, or what did not fail does. */
function worsened(before: Report, after: Report): readonly string[] {
  const words = wordsOf(after);
  return before.verdicts
    .filter(({ rule, verdict }) => {
      const now = words.get(rule)!;
      return verdict === "holds"
        ? now !== "holds" && now !== "not-applicable"
        : now === "fails" && verdict !== "fails";
    })
    .map(({ rule }) => rule);
}

/** What is not so of what a remedy promises, by evaluating the build with it; empty where all is. */
export async function faultsOfRemedy(
  build: Build,
  before: Report,
  { rule }: Pick<FindingRemedies, "rule">,
  remedy: Remedy,
): Promise<readonly string[]> {
  const after = await evaluate(withChange(build, remedy));
  const words = wordsOf(after);
  const faults: string[] = [];
  if (words.get(rule) !== "holds") faults.push(`${rule} is ${words.get(rule)}`);
  for (const id of worsened(before, after)) faults.push(`breaks ${id}`);
  for (const id of remedy.settles) if (words.get(id) !== "holds") faults.push(`does not settle ${id}`);
  const less = await wordWith(build, remedy, remedy.steps - 1, rule);
  const { verdict, breaks } = remedy.oneStepLess;
  if (less !== verdict) faults.push(`with one step less ${rule} is ${less}, not ${verdict}`);
  if (less === "holds" && breaks.length === 0) faults.push("one step less does as well");
  return faults;
}

/** A smaller change on the same way that does as well; undefined where none does, or the way is too long to try. */
export async function smallerThan(build: Build, rule: string, remedy: Remedy): Promise<number | undefined> {
  if (remedy.oneStepLess.breaks.length > 0) return undefined;
  for (let rung = 1; rung < Math.min(remedy.steps, SCANNED); rung += 1)
    if ((await wordWith(build, remedy, rung, rule)) === "holds") return rung;
  return undefined;
}

/** What is not so of the size of which it is said that it would do but breaks something. */
export async function faultsOfNearest(
  build: Build,
  before: Report,
  rule: string,
  { nearest, breaks = [] }: NoRemedy,
): Promise<readonly string[]> {
  if (nearest === undefined) return [];
  const words = wordsOf(before);
  const holds = await wordWith(build, nearest, nearest.steps, rule);
  const faults = holds === "holds" ? [] : [`${rule} is ${holds} at ${nearest.text}`];
  for (const { rule: broken } of breaks) {
    const now = await wordWith(build, nearest, nearest.steps, broken);
    const stood = words.get(broken);
    const worse = stood === "holds" ? now !== "holds" && now !== "not-applicable" : now === "fails";
    if (!worse) faults.push(`${broken} is ${stood} and stays ${now}`);
  }
  return faults;
}
