import { type RuleFile, type Weight, weights } from "@trialfit/rules";
import { type Build, evaluate, type FindingRemedies, type Remedy, type Report } from "trialfit";
import { spread, withChange, wordsOf } from "./changedBuild.ts";
import { brokenIn, furtherIn, isBreak } from "./standsWorse.ts";

/** A build with what it says of itself, and the rules by which it is judged. */
export interface Ground {
  readonly build: Build;
  readonly before: Report;
  readonly rules: readonly RuleFile[];
  /** Smaller changes, or other sizes, of one way that are tried; all of them where there are no more. */
  readonly sizes: number;
}

type Finding = Pick<FindingRemedies, "rule" | "weight">;
const heaviestFirst = Object.keys(weights) as readonly Weight[];

const only = ({ rules }: Ground, ids: readonly string[]) => rules.filter(({ id }) => ids.includes(id));

/** What is not so of what a change is said to make worse that does not hold already. */
function faultsOfWorsens({ before }: Ground, after: Report, rule: string, remedy: Remedy): readonly string[] {
  const told = new Map(remedy.worsens.map((one) => [one.rule, one]));
  return before.verdicts.flatMap((was) => {
    const now = after.verdicts.find((one) => one.rule === was.rule)!;
    const saying = told.get(was.rule);
    const stood = was.verdict === "fails" || was.verdict === "open";
    if (!stood || was.rule === rule)
      return saying === undefined ? [] : [`worsens ${was.rule}, which it cannot`];
    if (saying !== undefined && now.verdict === "unknown") return [];
    if (now.verdict !== was.verdict)
      return saying === undefined ? [] : [`worsens ${was.rule}: ${now.verdict}`];
    const further = furtherIn(was, now);
    if (further === "plainly" && saying?.slight !== false) return [`does not tell that ${was.rule} is worse`];
    return further === "no" && saying !== undefined ? [`says that ${was.rule} is worse`] : [];
  });
}

/** What is not so of what a change breaks: nothing, but for a compromise, which says what, all of it lighter. */
function faultsOfBreaks(
  { before }: Ground,
  after: Report,
  { weight }: Finding,
  remedy: Remedy,
): readonly string[] {
  const broken = brokenIn(before, after);
  const brought = remedy.brings.map(({ rule }) => rule);
  const heavy = remedy.brings.filter(
    (one) => heaviestFirst.indexOf(one.weight) <= heaviestFirst.indexOf(weight),
  );
  return [
    ...broken.filter((id) => !brought.includes(id)).map((id) => `breaks ${id}`),
    ...brought.filter((id) => !broken.includes(id)).map((id) => `does not bring ${id} into question`),
    ...heavy.map(({ rule }) => `brings ${rule} into question, which weighs as much`),
  ];
}

/** What is not so of what one step less is said to come to. */
async function faultsOfLess(ground: Ground, { rule }: Finding, remedy: Remedy): Promise<readonly string[]> {
  const { verdict, breaks } = remedy.oneStepLess;
  const build = withChange(ground.build, remedy, remedy.steps - 1);
  const words = await wordsOf(build, only(ground, [rule, ...breaks]));
  const stood = new Map(ground.before.verdicts.map((one) => [one.rule, one.verdict]));
  return [
    ...(words.get(rule) === verdict
      ? []
      : [`with one step less ${rule} is ${words.get(rule)}, not ${verdict}`]),
    ...(verdict === "holds" && breaks.length === 0 ? ["one step less does as well"] : []),
    ...breaks
      .filter((id) => !isBreak(stood.get(id)!, words.get(id)!))
      .map((id) => `with one step less ${id} is ${words.get(id)}: not broken`),
  ];
}

/** What is not so of what a remedy or compromise promises, by evaluating the build with it; empty where all is. */
export async function faultsOfRemedy(
  ground: Ground,
  finding: Finding,
  remedy: Remedy,
): Promise<readonly string[]> {
  const after = await evaluate(withChange(ground.build, remedy), { rules: ground.rules });
  const words = new Map(after.verdicts.map(({ rule, verdict }) => [rule, verdict]));
  const { rule } = finding;
  return [
    ...(words.get(rule) === "holds" ? [] : [`${rule} is ${words.get(rule)}`]),
    ...faultsOfBreaks(ground, after, finding, remedy),
    ...faultsOfWorsens(ground, after, rule, remedy),
    ...remedy.settles.filter((id) => words.get(id) !== "holds").map((id) => `does not settle ${id}`),
    ...ground.before.verdicts
      .filter(
        ({ verdict, rule: id }) => (verdict === "fails" || verdict === "open") && words.get(id) === "holds",
      )
      .filter(({ rule: id }) => id !== rule && !remedy.settles.includes(id))
      .map(({ rule: id }) => `settles ${id} untold`),
    ...(await faultsOfLess(ground, finding, remedy)),
  ];
}

/** A smaller change on the same way that does as well, among all or many; undefined where none of them does. */
export async function smallerThan(
  ground: Ground,
  { rule, weight }: Finding,
  remedy: Remedy,
): Promise<number | undefined> {
  const { build, before, rules } = ground;
  const weighing =
    remedy.brings.length === 0 ? heaviestFirst : heaviestFirst.slice(0, heaviestFirst.indexOf(weight) + 1);
  const counts = new Set(
    rules.filter(({ otherwise }) => weighing.includes(otherwise.weight)).map(({ id }) => id),
  );
  for (const rung of spread(1, remedy.steps - 1, ground.sizes)) {
    const there = withChange(build, remedy, rung);
    if ((await wordsOf(there, only(ground, [rule]))).get(rule) !== "holds") continue;
    const broken = brokenIn(before, await evaluate(there, { rules }));
    if (!broken.some((id) => counts.has(id))) return rung;
  }
  return undefined;
}
