import type { RuleFile } from "@trialfit/rules";
import { type Build, type SizeChange, type VerdictWord, withField } from "trialfit";
import { Ladder } from "../../packages/core/src/choose/remedy/Ladder.ts";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { compileRules } from "../../packages/core/src/judge/compileRules.ts";
import { judgeBuild } from "../../packages/core/src/judge/judgeBuild.ts";

/** The ladder on which a change lies. */
export const ladderOf = (build: Build, { path, from, to }: SizeChange): Ladder =>
  new Ladder(withDefaults(build), path, to > from ? 1 : -1);

/** A build with a dimension on a rung of a ladder, as whoever makes the change would enter it. */
export function onRung(build: Build, ladder: Ladder, rung: number): Build {
  if (rung === 0) return build;
  const text = ladder.textAt(rung);
  return text === undefined
    ? { ...build, values: new Map(build.values).set(ladder.path, ladder.at(rung)) }
    : withField(build, ladder.path, text);
}

/** A build with a change made; on another rung of the same ladder if given. */
export function withChange(build: Build, change: SizeChange, rung = change.steps): Build {
  return rung === change.steps && change.text !== undefined
    ? withField(build, change.path, change.text)
    : onRung(build, ladderOf(build, change), rung);
}

/** What some rules say of a build, by the way of `evaluate`, without what would settle them. */
export async function wordsOf(
  build: Build,
  files: readonly RuleFile[],
): Promise<ReadonlyMap<string, VerdictWord>> {
  const { judged } = await judgeBuild(withDefaults(build), compileRules(files), quantities, []);
  return new Map(judged.map(({ verdict }) => [verdict.rule, verdict.verdict]));
}

/** All whole numbers between two, or so many of them spread evenly; the ends are among them. */
export function spread(from: number, to: number, most: number): readonly number[] {
  if (to < from) return [];
  const count = Math.min(most, to - from + 1);
  const at = (index: number) => from + Math.round((index * (to - from)) / Math.max(1, count - 1));
  return Array.from({ length: count }, (_, index) => at(index));
}
