import { sources } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { appendExamples } from "./appendExamples.ts";
import { reviewRule } from "./reviewRule.ts";
import { rulePath, ruleText } from "./ruleText.test-support.ts";

const alone = { rules: [], sources };
const review = (text: string) => reviewRule(text, rulePath, alone);
const without = (name: string) => ruleText.replace(new RegExp(` {2}- name: ${name}\\n.*\\n.*\\n`), "");

describe("the review of a rule file", () => {
  it("says at which line a slip would go unnoticed, and which example would notice it", () => {
    const { problems, add, score } = review(without("two cylinders"));
    expect(problems.map(({ kind, line }) => [kind, line])).toEqual([
      ["unnoticed-slip", 10],
      ["unnoticed-slip", 10],
      ["unnoticed-slip", 10],
    ]);
    expect(score!.made - score!.caught).toBe(3);
    expect(add.map(({ verdict }) => verdict)).toEqual(["not-applicable"]);
    expect(review(appendExamples(without("two cylinders"), add)!).problems).toEqual([]);
  });
  it("says a part that changes nothing once, not each thing in it", () => {
    const twice = ruleText.replace(
      "value: street }, value: 0.30 mm }",
      "value: street }, value: 0.30 mm }\n      - { when: { fact: use, operator: in, value: [circuit, drag] }, value: 0.20 mm }",
    );
    const { problems, score } = review(twice);
    expect(problems.map(({ kind, field }) => [kind, field])).toEqual([
      // Two cases leave nothing to the value itself: it can be moved as well.
      ["needless-part", "limits.least.value"],
      ["needless-part", "limits.least.value"],
      ["case-changes-nothing", "limits.least.cases.1"],
    ]);
    expect(score!.made - score!.caught).toBeGreaterThan(3);
  });
  it("does not score a rule that cannot be judged, or whose examples cannot be read", () => {
    expect(review(ruleText.replace("value: 120 mm", "value: 120 kg")).score).toBeUndefined();
    expect(review(ruleText.replace("block.bore: 119.9 mm", "block.bore: 119.9 kg")).score).toBeUndefined();
  });
});

describe("examples that are added", () => {
  const example = { name: "one more", given: { use: "street" }, verdict: "unknown" as const };
  it("stand at the end of the file; nothing else changes", () => {
    const added = appendExamples(ruleText, [example]);
    expect(added).toBe(`${ruleText}  - name: one more\n    given: { use: street }\n    verdict: unknown\n`);
  });
  it("are left to a person where the file does not end with its examples", () => {
    expect(appendExamples(`${ruleText}disputed: Some say so, others so.\n`, [example])).toBeUndefined();
  });
});
