import { type Build, type CompiledRule, type VerdictWord, verdictWords } from "trialfit";
import { decideRule } from "../../packages/core/src/judge/decideRule.ts";
import { exactFacts } from "./exactFacts.ts";

/** How often a rule said each word. */
export type Counts = Record<VerdictWord, number>;

const words = Object.keys(verdictWords) as VerdictWord[];

/** Words that a rule must be seen to say: it holds, it fails, and it stays out where it has a `when`. */
export function dueWords({ when }: CompiledRule): readonly VerdictWord[] {
  return when === undefined ? ["holds", "fails"] : ["holds", "fails", "not-applicable"];
}

/** Which of the words that a rule must be seen to say it has not said. */
export function unseenWords(rule: CompiledRule, counts: Counts): readonly VerdictWord[] {
  return dueWords(rule).filter((word) => counts[word] === 0);
}

/**
 * Judges builds at their nominal values and counts what each rule says; nothing is `open` there, since nothing is
 * uncertain.
 * @param untilSeen true: a rule is judged no more once it has said all that it must, and builds end when all have
 */
export function countVerdicts(
  rules: readonly CompiledRule[],
  builds: Iterable<Build>,
  untilSeen: boolean,
): ReadonlyMap<string, Counts> {
  const counts = new Map(
    rules.map(({ file }) => [file.id, Object.fromEntries(words.map((word) => [word, 0])) as Counts]),
  );
  let judged = rules;
  for (const build of builds) {
    const facts = exactFacts(build);
    for (const rule of judged) counts.get(rule.file.id)![decideRule(rule, facts)] += 1;
    if (untilSeen) judged = judged.filter((rule) => unseenWords(rule, counts.get(rule.file.id)!).length > 0);
    if (judged.length === 0) break;
  }
  return counts;
}
