import type { RuleFile } from "@trialfit/rules";
import { stringify } from "yaml";

/** A rule as a YAML text, for a rule that is at hand as data only. */
export function printRule(file: RuleFile): string {
  return stringify(file, { lineWidth: 110 });
}
