import type { RuleExample, RuleFile } from "@trialfit/rules";
import { compileRule, readRule } from "../judge/compileRule.ts";
import { decideRule } from "../judge/decideRule.ts";
import { exampleLookup } from "../judge/judgeExample.ts";
import type { Mutant } from "./Mutant.ts";
import { judgedFacts, type RuleScore, scoreRule, soundExamples } from "./scoreRule.ts";
import { suggestExample } from "./suggestExample.ts";

/** What would make the examples of a rule notice every slip. */
export interface Advice {
  readonly score: RuleScore;
  /** Examples to add, their verdicts as the rule has them now: whether that is meant, its author decides. */
  readonly add: readonly RuleExample[];
  /** Slips that change nothing: what was changed can be left out of the rule. */
  readonly needless: readonly Mutant[];
}

/**
 * Scores a rule and says what would help.
 * @throws RuleError when the rule cannot be judged, InputError when an example cannot be read
 */
export function adviseRule(file: RuleFile): Advice {
  const score = scoreRule(file);
  const rule = compileRule(file);
  const facts = judgedFacts(rule);
  const examples = [...soundExamples(rule)];
  const add: RuleExample[] = [];
  const needless: Mutant[] = [];
  for (const mutant of score.survivors) {
    const changed = readRule(mutant.file).rule;
    if (examples.some(({ example, lookup }) => decideRule(changed, lookup) !== example.verdict)) continue;
    const example = suggestExample(rule, mutant, examples);
    if (example === undefined) {
      needless.push(mutant);
      continue;
    }
    add.push(example);
    examples.push({ example, lookup: exampleLookup(facts, example) });
  }
  return { score, add, needless };
}
