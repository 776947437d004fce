import { fc, test } from "@fast-check/vitest";
import { type Condition, operators, type RuleFile } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import type { ConditionNode } from "./CompiledRule.ts";
import { negated } from "./compare.ts";
import { compareRuleFixture } from "./compareRuleFixture.test-support.ts";
import { compileRule } from "./compileRule.ts";
import { decide } from "./decide.ts";
import type { Fact } from "./Fact.ts";
import { judgeExample } from "./judgeExample.ts";
import { RuleError } from "./RuleError.ts";
import { runEngine } from "./runEngine.ts";

const band = fc
  .tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: 0, max: 2 }), fc.integer({ min: 0, max: 2 }))
  .map(
    ([nominal, minus, plus]): Fact => ({
      kind: "band",
      low: nominal - minus,
      nominal,
      high: nominal + plus,
      missing: [],
    }),
  );
const fact = fc.oneof(
  { weight: 6, arbitrary: band },
  { weight: 2, arbitrary: fc.constantFrom("iron", "steel").map((word): Fact => ({ kind: "word", word })) },
  {
    weight: 2,
    arbitrary: fc.constantFrom("a", "b").map((path): Fact => ({ kind: "missing", missing: [path] })),
  },
);
const names = ["f0", "f1", "f2", "f3"] as const;
const facts = fc
  .tuple(fact, fact, fact, fact)
  .map((list) => new Map(names.map((name, index) => [name as string, list[index]!])));
const name = fc.constantFrom(...names);
const value = fc.oneof(
  name.map((other) => ({ kind: "fact" as const, fact: other })),
  fc
    .integer({ min: -3, max: 3 })
    .map((number) => ({ kind: "number" as const, value: number, text: String(number) })),
  fc.constantFrom(["iron"], ["iron", "steel"]).map((words) => ({ kind: "words" as const, words })),
);
const leaf = fc.record({
  kind: fc.constant("leaf" as const),
  fact: name,
  operator: fc.constantFrom(...operators),
  value,
});
const { tree } = fc.letrec<{ tree: ConditionNode }>((tie) => ({
  tree: fc.oneof(
    { depthSize: "small" },
    leaf,
    fc.record({
      kind: fc.constantFrom("all" as const, "any" as const),
      children: fc.array(tie("tree"), { minLength: 1, maxLength: 3 }),
    }),
  ),
}));

describe("two-sided judgement", () => {
  test.prop([tree, facts], { numRuns: 400 })(
    "json-rules-engine and the plain walk give the same answers",
    async (condition, given) => {
      const plain = decide(condition, (wanted) => given.get(wanted)!);
      const answers = await runEngine([{ id: "q", condition, scope: (wanted) => wanted }], given);
      expect({ surely: answers.get("q")!.surely, possibly: answers.get("q")!.possibly }).toEqual({
        surely: plain.surely,
        possibly: plain.possibly,
      });
    },
  );
  test.prop([tree, facts])(
    "what is sure is possible, and only unsettled conditions name missing inputs",
    (condition, given) => {
      const { surely, possibly, missing } = decide(condition, (wanted) => given.get(wanted)!);
      if (surely) expect(possibly).toBe(true);
      if (surely === possibly) expect(missing).toEqual([]);
    },
  );
  it("every operator has a negation that is its own inverse", () => {
    for (const operator of operators) expect(negated[negated[operator]]).toBe(operator);
  });
});

const fixture = (requires: Condition, extra: Partial<RuleFile> = {}): RuleFile => ({
  ...compareRuleFixture,
  requires,
  ...extra,
});
const say = async (file: RuleFile, given: Record<string, string>) =>
  judgeExample(compileRule(file), { given });

describe("conditions as authored", () => {
  const atLeast: Condition = { fact: "block.bore", operator: "greaterThanInclusive", value: "80 mm" };
  it("turns not into negation-free form", async () => {
    const file = fixture({
      not: {
        any: [
          { fact: "block.bore", operator: "lessThan", value: "80 mm" },
          { not: { fact: "use", operator: "equal", value: "street" } },
        ],
      },
    });
    expect((await say(file, { "block.bore": "80 mm ± 0", use: "street" })).verdict).toBe("holds");
    expect((await say(file, { "block.bore": "80 mm ± 0", use: "drag" })).verdict).toBe("fails");
    expect((await say(file, { "block.bore": "79 mm ± 0" })).verdict).toBe("fails");
    const open = await say(file, { "block.bore": "81 mm ± 0" });
    expect([open.verdict, open.missing]).toEqual(["unknown", ["use"]]);
  });
  it("gives the same verdict in inches and in millimetres", async () => {
    for (const text of ["3.15 in ± 0.001", "80.01 mm ± 0.0254", "0.08001 m ± 0.0254 mm"]) {
      expect((await say(fixture(atLeast), { "block.bore": text })).verdict, text).toBe("open");
    }
  });
  it("is not relevant, or possibly relevant", async () => {
    const file = fixture(atLeast, { when: { fact: "use", operator: "equal", value: "street" } });
    expect((await say(file, { "block.bore": "70 mm ± 0", use: "drag" })).verdict).toBe("not-applicable");
    expect((await say(file, { "block.bore": "70 mm ± 0" })).missing).toEqual(["use"]);
    expect((await say(file, { "block.bore": "90 mm ± 0" })).verdict).toBe("holds");
  });
  it("takes the band of a limit over the cases that may apply, and names what would settle it", async () => {
    const limits = {
      least: {
        value: "80 mm",
        range: ["70 mm", "90 mm"] as [string, string],
        standing: "common-practice" as const,
        movedBy: ["use"],
        cases: [{ when: { fact: "use", operator: "equal" as const, value: "drag" }, value: "75 mm" }],
      },
    };
    const file = fixture(
      { fact: "block.bore", operator: "greaterThanInclusive", value: { fact: "limit.least" } },
      { limits },
    );
    expect((await say(file, { "block.bore": "77 mm ± 0", use: "drag" })).verdict).toBe("holds");
    expect((await say(file, { "block.bore": "77 mm ± 0", use: "street" })).verdict).toBe("fails");
    expect((await say(file, { "block.bore": "77 mm ± 0" })).missing).toEqual(["use"]);
    expect((await say(file, { "block.bore": "82 mm ± 0" })).verdict).toBe("holds");
    expect((await say(file, { "block.bore": "72 mm ± 0" })).verdict).toBe("fails");
  });
});

describe("rules that cannot be used", () => {
  it.each<[string, Partial<RuleFile>, RegExp]>([
    [
      "unknown fact",
      { requires: { fact: "block.boor", operator: "lessThan", value: "80 mm" } },
      /did you mean "block.bore"/,
    ],
    [
      "wrong unit",
      { requires: { fact: "block.bore", operator: "lessThan", value: "80 kg" } },
      /measures something else/,
    ],
    [
      "word compared as a number",
      { requires: { fact: "use", operator: "lessThan", value: "80" } },
      /cannot compare/,
    ],
    [
      "a word that never occurs",
      { requires: { fact: "use", operator: "equal", value: "parade" } },
      /never "parade"/,
    ],
    [
      "limit that is not there",
      { requires: { fact: "block.bore", operator: "lessThan", value: { fact: "limit.most" } } },
      /not among its limits/,
    ],
    [
      "unused limit",
      { limits: { most: { value: "1 mm", range: ["1 mm", "1 mm"], standing: "from-memory", movedBy: [] } } },
      /never compared/,
    ],
    [
      "unknown name in a text",
      { otherwise: { work: "order", weight: "note", do: "Make it {boor} wide." } },
      /\{boor\}/,
    ],
  ])("%s", (_, change, message) => {
    expect(() => compileRule({ ...compareRuleFixture, ...change })).toThrow(message);
    expect(() => compileRule({ ...compareRuleFixture, ...change })).toThrow(RuleError);
  });
});
