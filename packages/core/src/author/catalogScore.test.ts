import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { compareRuleFixture } from "../judge/compareRuleFixture.test-support.ts";
import { compileRule } from "../judge/compileRule.ts";
import { decideWithMissing } from "../judge/decideRule.ts";
import { exampleLookup, judgeExample } from "../judge/judgeExample.ts";
import { adviseRule } from "./adviseRule.ts";
import { countCatalog } from "./countCatalog.ts";
import { printExample } from "./printExample.ts";
import { scoreRule, soundExamples } from "./scoreRule.ts";
import { suggestExample } from "./suggestExample.ts";

describe("the examples of the catalog", () => {
  it.each(ruleFiles.map((file) => [file.id, file] as const))("%s: notice every slip", (_, file) => {
    const { score, add, needless } = adviseRule(file);
    expect(add.map(printExample).join("")).toBe("");
    expect(needless.map((mutant) => `${mutant.path.join(".")}: ${mutant.change}: changes nothing`)).toEqual(
      [],
    );
    expect(score.caught).toBe(score.made);
    expect(score.made).toBeGreaterThan(file.confirm === undefined ? 2 : 0);
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

describe("what the catalog holds and leaves out", () => {
  const scores = ruleFiles.map(scoreRule);
  const count = countCatalog(ruleFiles, scores);
  it("is counted", () => {
    expect(count.rules).toBe(ruleFiles.length);
    expect(count.limits).toBeGreaterThan(50);
    expect(count.examples).toBeGreaterThan(5 * count.rules);
    expect(count.mutants.made).toBeGreaterThan(10 * count.rules);
    expect(count.mutants.caught).toBe(count.mutants.made);
    expect(count.quantities.used + count.quantities.shown).toBe(quantities.size);
    expect(count.stagesWithoutRule).toEqual([]);
    expect(count.partsWithoutRule).toEqual([]);
  });
  it("leaves no quantity idle", () => expect(count.quantities.idle).toEqual([]));
  it("names what a smaller catalog leaves out", () => {
    const small = countCatalog(ruleFiles.filter((file) => file.id === "driveline-loss-plausible"));
    expect(small).toMatchObject({ rules: 1, limits: 2, sources: 1, mutants: { made: 0, caught: 0 } });
    expect(small.partsWithoutRule).toContain("piston");
    expect(small.stagesWithoutRule).toEqual(["machine", "trial-assembly", "final-assembly", "run"]);
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
