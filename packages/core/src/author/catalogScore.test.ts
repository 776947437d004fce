import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { compareRuleFixture } from "../judge/compareRuleFixture.test-support.ts";
import { compileRule } from "../judge/compileRule.ts";
import { decideWithMissing } from "../judge/decideRule.ts";
import { exampleLookup, judgeExample } from "../judge/judgeExample.ts";
import { printExample } from "./printExample.ts";
import { scoreRule, soundExamples } from "./scoreRule.ts";
import { suggestExample } from "./suggestExample.ts";

describe("the examples of the catalog", () => {
  it.each(ruleFiles.map((file) => [file.id, file] as const))("%s: notice every slip", (_, file) => {
    const { made, caught, survivors } = scoreRule(file);
    const rule = compileRule(file);
    const unnoticed = survivors.map((mutant) => {
      const example = suggestExample(rule, mutant, soundExamples(rule));
      const advice =
        example === undefined ? "it changes nothing: leave this part out" : `add:\n${printExample(example)}`;
      return `${mutant.path.join(".")}: ${mutant.change}; ${advice}`;
    });
    expect(unnoticed).toEqual([]);
    expect(caught).toBe(made);
    expect(made).toBeGreaterThan(2);
  });
  it("say the same to the plain walk and to json-rules-engine, with what is missing", async () => {
    let compared = 0;
    for (const file of ruleFiles) {
      const rule = compileRule(file);
      for (const example of file.examples) {
        const { verdict, missing } = await judgeExample(rule, example);
        expect(decideWithMissing(rule, exampleLookup(rule.facts, example))).toEqual({ verdict, missing });
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(ruleFiles.length);
  });
});

describe("a rule with few examples", () => {
  it("is scored below 100 %, and what would help is named", () => {
    const { made, caught, survivors } = scoreRule(compareRuleFixture);
    expect([made, caught]).toEqual([4, 2]);
    expect(survivors.map((mutant) => mutant.change)).toEqual([
      "greaterThanInclusive of block.bore read as greaterThan",
      "80 mm for block.bore read as 79 mm",
    ]);
    const rule = compileRule(compareRuleFixture);
    const suggested = survivors.map((mutant) => suggestExample(rule, mutant, soundExamples(rule)));
    expect(suggested.map((example) => [example?.given["block.bore"], example?.verdict])).toEqual([
      ["80 mm ± 0", "holds"],
      ["79 mm ± 0", "fails"],
    ]);
  });
  it("is not helped by an example that contradicts it", () => {
    const examples = [{ name: "wrong", given: { "block.bore": "70 mm ± 0" }, verdict: "holds" as const }];
    expect(scoreRule({ ...compareRuleFixture, examples }).caught).toBe(0);
  });
});
