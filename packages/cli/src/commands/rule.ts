import { defineCommand } from "citty";
import { checkRules } from "./rule/checkRules.ts";
import { newRule } from "./rule/newRule.ts";
import { tryRule } from "./rule/tryRule.ts";

/** `trialfit rule check|new|try` */
export const rule = defineCommand({
  meta: {
    name: "rule",
    description: "For authors of rules: check rule files, begin a new one, try one on a build",
  },
  subCommands: { check: checkRules, new: newRule, try: tryRule },
});
