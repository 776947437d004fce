import { type RuleFile, validateRuleFile } from "@trialfit/rules";
import type { CompiledRule } from "./CompiledRule.ts";
import { compileRule } from "./compileRule.ts";
import { RuleError } from "./RuleError.ts";

const compiled = new WeakMap<RuleFile, CompiledRule>();

function check(file: RuleFile): void {
  if (validateRuleFile(file)) return;
  const problems = (validateRuleFile.errors ?? []).map(
    (error) => `${error.instancePath || "/"} ${error.message ?? error.keyword}`,
  );
  throw new RuleError(String((file as { id?: unknown } | null)?.id ?? "(a rule without an id)"), [
    ...new Set(problems),
  ]);
}

/**
 * Checks and compiles rules, each once, sorted by id.
 * @throws RuleError when one cannot be used, or two have the same id.
 */
export function compileRules(files: readonly RuleFile[]): readonly CompiledRule[] {
  const rules = files.map((file) => {
    let rule = compiled.get(file);
    if (rule === undefined) {
      check(file);
      rule = compileRule(file);
      compiled.set(file, rule);
    }
    return rule;
  });
  rules.sort((a, b) => (a.file.id < b.file.id ? -1 : 1));
  const twice = rules.find((rule, index) => rules[index + 1]?.file.id === rule.file.id);
  if (twice !== undefined) throw new RuleError(twice.file.id, ["two rules have this id"]);
  return rules;
}
