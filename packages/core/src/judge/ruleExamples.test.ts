import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { compileRule } from "./compileRule.ts";
import { judgeExample } from "./judgeExample.ts";

describe("every example of every rule says what it claims", () => {
  let run = 0;
  for (const file of ruleFiles) {
    describe(file.id, () => {
      it("can be compiled", () => expect(compileRule(file).requires).toBeDefined());
      it.each(file.examples.map((example) => [example.name, example] as const))("%s", async (_, example) => {
        const verdict = await judgeExample(compileRule(file), example);
        expect(verdict.verdict).toBe(example.verdict);
        if (example.missing !== undefined) expect(verdict.missing).toEqual([...example.missing].sort());
        run += 1;
      });
    });
  }
  it("ran them all", () => {
    expect(run).toBe(ruleFiles.reduce((sum, file) => sum + file.examples.length, 0));
    expect(run).toBeGreaterThan(0);
  });
});
