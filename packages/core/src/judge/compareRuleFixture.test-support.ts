import type { RuleFile } from "@trialfit/rules";

/** A complete rule file that tests change one thing of. */
export const compareRuleFixture: RuleFile = {
  id: "a-rule-for-tests",
  title: "The bore is at least 80 mm",
  system: "pistons",
  parts: ["block"],
  stages: ["choose"],
  requires: { fact: "block.bore", operator: "greaterThanInclusive", value: "80 mm" },
  otherwise: { work: "order", weight: "note", do: "Take another block." },
  because: "Only for tests of the evaluator.",
  sources: [{ id: "definition" }],
  examples: [
    { name: "inside", given: { "block.bore": "81 mm" }, verdict: "holds" },
    { name: "missing", given: {}, verdict: "unknown" },
  ],
};
