import { type RuleFile, ruleFiles, sources } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { compareRuleFixture } from "./compareRuleFixture.test-support.ts";
import { compileRule } from "./compileRule.ts";
import { judgeExample } from "./judgeExample.ts";

/** Limits that lack an example inside, on or outside them. */
async function limitsWithoutExamples(file: RuleFile): Promise<readonly string[]> {
  const rule = compileRule(file);
  const seen = new Map<string, Set<number>>();
  for (const example of file.examples) {
    const { comparisons } = await judgeExample(rule, example);
    for (const { againstName, margin } of comparisons) {
      if (againstName === undefined || margin === undefined) continue;
      const slack = 1e-9 * Math.abs(margin.nominal) + 1e-15;
      const sides = seen.get(againstName) ?? new Set();
      sides.add(Math.abs(margin.nominal) <= slack ? 0 : Math.sign(margin.nominal));
      seen.set(againstName, sides);
    }
  }
  return rule.limits.flatMap(({ fact }) =>
    [1, 0, -1]
      .filter((side) => seen.get(fact)?.has(side) !== true)
      .map((side) => `${file.id} ${fact}: none ${["outside", "on", "inside"][side + 1]}`),
  );
}

/** Quantities that are neither asked for by a rule, nor input of one that is, nor marked for display. */
function idleQuantities(): readonly string[] {
  const used = new Set<string>();
  const use = (id: string): void => {
    const quantity = quantities.get(id);
    if (quantity === undefined || used.has(id)) return;
    used.add(id);
    for (const path of Object.values(quantity.inputs)) use(path);
  };
  for (const file of ruleFiles) compileRule(file).facts.forEach(use);
  for (const quantity of quantities.values()) if (quantity.display) use(quantity.id);
  return [...quantities.keys()].filter((id) => !used.has(id));
}

describe("the rule catalog", () => {
  it("has an example inside, on and outside every limit", async () => {
    const gaps = await Promise.all(ruleFiles.map(limitsWithoutExamples));
    expect(gaps.flat()).toEqual([]);
    expect(
      ruleFiles.reduce((count, file) => count + Object.keys(file.limits ?? {}).length, 0),
    ).toBeGreaterThan(50);
    const broken = {
      ...compareRuleFixture,
      requires: { fact: "block.bore", operator: "greaterThan" as const, value: { fact: "limit.least" } },
      limits: {
        least: {
          value: "80 mm",
          range: ["70 mm", "90 mm"] as [string, string],
          standing: "from-memory" as const,
          movedBy: [],
        },
      },
    };
    expect(await limitsWithoutExamples(broken)).toEqual([
      "a-rule-for-tests limit.least: none on",
      "a-rule-for-tests limit.least: none outside",
    ]);
  });
  it("has an unknown example in every rule, and a not-applicable one where a rule is not always relevant", () => {
    const without = (word: string, wanted: (file: RuleFile) => boolean) =>
      ruleFiles
        .filter((file) => wanted(file) && !file.examples.some((example) => example.verdict === word))
        .map((file) => file.id);
    expect(without("unknown", () => true)).toEqual([]);
    expect(without("not-applicable", (file) => file.when !== undefined)).toEqual([]);
  });
  it("names only sources that are listed, and every listed source is named", () => {
    const named = new Set(
      [...ruleFiles, ...quantities.values()].flatMap((one) => one.sources.map((source) => source.id)),
    );
    const fromExamples = [...quantities.values()].flatMap((one) =>
      one.examples.flatMap((example) => (example.from === undefined ? [] : [example.from.id])),
    );
    for (const id of fromExamples) named.add(id);
    expect([...named].filter((id) => !(id in sources)).sort()).toEqual([]);
    expect(Object.keys(sources).filter((id) => !named.has(id))).toEqual([]);
    expect(named.size).toBeGreaterThan(8);
  });
  it("leaves no quantity idle", () => expect(idleQuantities()).toEqual([]));
  it("carries a caution in every stop rule about parts", () => {
    const bare = ruleFiles
      .filter(
        (file) => file.system !== "targets" && file.otherwise.weight === "stop" && file.caution === undefined,
      )
      .map((file) => file.id);
    expect(bare).toEqual([]);
  });
  it("is large enough to be worth browsing", () => {
    expect(ruleFiles.length).toBeGreaterThanOrEqual(30);
    expect(quantities.size).toBeGreaterThanOrEqual(40);
  });
});
