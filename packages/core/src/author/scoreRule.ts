import type { RuleExample, RuleFile } from "@trialfit/rules";
import { type CompiledRule, leavesOf } from "../judge/CompiledRule.ts";
import { readRule } from "../judge/compileRule.ts";
import type { Lookup } from "../judge/decide.ts";
import { decideRule } from "../judge/decideRule.ts";
import { exampleLookup } from "../judge/judgeExample.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
import type { Mutant } from "./Mutant.ts";
import { mutateRule } from "./mutateRule.ts";

/** An example whose facts are at hand. */
export interface ReadExample {
  readonly example: RuleExample;
  readonly lookup: Lookup;
}

/** How many slips the examples of a rule would notice. */
export interface RuleScore {
  readonly rule: string;
  readonly made: number;
  readonly caught: number;
  /** The slips that no example notices. */
  readonly survivors: readonly Mutant[];
}

/** Fields and quantities that the verdict of a rule rests on: those in its texts are not among them. */
export function judgedFacts({ when, requires, limits }: CompiledRule): readonly string[] {
  const trees = [when, requires, ...limits.flatMap((limit) => limit.cases.map((one) => one.when))];
  const named = trees
    .flatMap(leavesOf)
    .flatMap((leaf) => [leaf.fact, ...(leaf.value.kind === "fact" ? [leaf.value.fact] : [])]);
  return [...new Set(named)];
}

/** The examples that a rule satisfies itself: one that contradicts it would seem to catch everything. */
export function soundExamples(rule: CompiledRule): readonly ReadExample[] {
  const facts = judgedFacts(rule);
  return rule.file.examples
    .map((example) => ({ example, lookup: exampleLookup(facts, example) }))
    .filter(({ example, lookup }) => decideRule(rule, lookup) === example.verdict);
}

function catches(examples: readonly ReadExample[], mutant: CompiledRule): boolean {
  const says = (lookup: Lookup): VerdictWord => decideRule(mutant, lookup);
  return examples.some(({ example, lookup }) => says(lookup) !== example.verdict);
}

/**
 * Changes a rule in every small way and counts how many of the changes at least one of its own examples notices.
 * @throws InputError when an example cannot be read
 */
export function scoreRule(file: RuleFile): RuleScore {
  const examples = soundExamples(readRule(file).rule);
  const mutants = mutateRule(file);
  const survivors = mutants.filter((mutant) => !catches(examples, readRule(mutant.file).rule));
  return { rule: file.id, made: mutants.length, caught: mutants.length - survivors.length, survivors };
}
