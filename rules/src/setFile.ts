import * as z from "zod";
import { condition, identifier, prose, ruleFile } from "./ruleFile.ts";
import { type Use, uses } from "./uses.ts";

const who = z.string().trim().min(2).max(100).describe("Who answers for it: a name or initials.");
const because = prose.describe("Why the shop departs from the set that it extends.");

const changedLimit = z.strictObject({
  rule: identifier.describe("The id of the rule."),
  limit: z.string().min(1).describe("The name of its limit, as least or most."),
  value: z.string().min(1).describe("The limit with its unit."),
  when: condition
    .optional()
    .describe("For which builds. Absent: for all, and the cases of the limit no longer count."),
  because,
  by: who,
});

const silenced = z.strictObject({ rule: identifier.describe("The id of the rule."), because, by: who });

/** A set of rules, as authored: another set, and what is different. */
export const setFile = z.strictObject({
  id: identifier.describe("The name of the set."),
  title: z.string().min(3).max(120).describe("What the set is called."),
  about: prose.describe("For whom it is, and what it is for."),
  extends: identifier.optional().describe("The set that it begins from. Absent: the whole catalog."),
  use: z
    .enum(Object.keys(uses) as [Use, ...Use[]])
    .optional()
    .describe("Judge every build as if it were for this use. Absent: for the use that the build states."),
  limits: z.array(changedLimit).optional().describe("Limits that the shop sets itself."),
  silence: z
    .array(silenced)
    .optional()
    .describe("Rules that the shop does not follow: they are judged and shown, and no longer counted."),
  rules: z.array(ruleFile).optional().describe("Rules of the shop's own, in the form of a rule file."),
});

export type SetFile = z.infer<typeof setFile>;
export type ChangedLimit = z.infer<typeof changedLimit>;
