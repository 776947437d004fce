import { type RuleFile, ruleFiles, type SetFile, setFiles } from "@trialfit/rules";
import type { AppliedSet } from "../judge/AppliedSet.ts";
import { applySetTo } from "./applySetTo.ts";

/**
 * A set with all that it inherits.
 * @param sets names of shipped sets or sets as data; the last is applied, the others may be extended by it
 * @param rules what the first set of the chain begins with
 * @throws SetError when a set is not known, extends itself, or names rules, limits or values that cannot be
 */
export function applySet(
  sets: readonly (string | SetFile)[],
  rules: readonly RuleFile[] = ruleFiles,
): AppliedSet {
  return applySetTo(sets, { rules, sets: setFiles });
}
