import { type CompiledRule, leavesOf } from "trialfit";

/** What a list of rules can be narrowed by, with the words that a rule has of each. */
export function filterWords(rule: CompiledRule) {
  const { parts, system, stages, otherwise, limits = {} } = rule.file;
  const conditions = [rule.when, ...rule.limits.flatMap(({ cases }) => cases.map((one) => one.when))];
  /** Uses for which it has a word of its own: a limit, or whether it is relevant. */
  const uses = conditions
    .flatMap(leavesOf)
    .flatMap(({ fact, value }) => (fact === "use" && value.kind === "words" ? value.words : []));
  return {
    part: parts,
    system: [system],
    stage: stages,
    work: [otherwise.work],
    weight: [otherwise.weight],
    use: [...new Set(uses)],
    standing: [...new Set(Object.values(limits).map(({ standing }) => standing))],
  } as const satisfies Record<string, readonly string[]>;
}
