import { describe, expect, it } from "vitest";
import type { ConditionNode, Leaf } from "../../judge/CompiledRule.ts";
import type { Fact } from "../../judge/Fact.ts";
import { missOf, relativeMargin } from "./relativeMargin.ts";

const facts: Readonly<Record<string, Fact>> = {
  gap: { kind: "band", low: 0.8, nominal: 1, high: 1.2, missing: [] },
  nothing: { kind: "band", low: 0, nominal: 0, high: 0, missing: [] },
  kind: { kind: "word", word: "plain" },
  absent: { kind: "missing", missing: ["absent"] },
};
const lookup = (name: string) => facts[name]!;
const number = (fact: string, operator: Leaf["operator"], value: number): Leaf => ({
  kind: "leaf",
  fact,
  operator,
  value: { kind: "number", value, text: "" },
});
const word = (operator: Leaf["operator"], ...words: string[]): Leaf => ({
  kind: "leaf",
  fact: "kind",
  operator,
  value: { kind: "words", words },
});
const all = (...children: ConditionNode[]): ConditionNode => ({ kind: "all", children });
const any = (...children: ConditionNode[]): ConditionNode => ({ kind: "any", children });

describe("the relative margin", () => {
  it.each<[string, ConditionNode, number]>([
    ["at least, from the low end", number("gap", "greaterThanInclusive", 0.5), 0.3],
    ["at least, missed", number("gap", "greaterThanInclusive", 2), -0.6],
    ["at most, from the high end", number("gap", "lessThanInclusive", 2), 0.4],
    ["on the limit", number("gap", "greaterThan", 0.8), 0],
    ["nothing against nothing", number("nothing", "lessThan", 0), 0],
    ["a word as it must be", word("in", "plain", "roller"), Infinity],
    ["another word", word("notEqual", "plain"), -Infinity],
    ["the least of all", all(number("gap", "greaterThan", 0.5), number("gap", "lessThan", 2)), 0.3],
    ["the greatest of any", any(number("gap", "greaterThan", 0.5), number("gap", "lessThan", 2)), 0.4],
    ["missing", number("absent", "lessThan", 2), Number.NaN],
    ["missing among all", all(number("gap", "lessThan", 2), number("absent", "lessThan", 2)), Number.NaN],
    ["missing among any", any(number("gap", "lessThan", 2), number("absent", "lessThan", 2)), 0.4],
  ])("%s", (_, node, margin) => {
    const found = relativeMargin(node, lookup);
    if (Number.isNaN(margin)) expect(found).toBeNaN();
    else expect(found).toBeCloseTo(margin, 12);
  });
});

describe("what is missed", () => {
  it("is measured from the best end of the band", () => {
    const node = number("gap", "greaterThanInclusive", 2);
    expect(missOf(node, lookup)).toEqual({ leaf: node, relative: expect.closeTo(-0.4, 12) });
    expect(missOf(number("gap", "greaterThanInclusive", 1.2), lookup)).toBeUndefined();
    expect(missOf(number("absent", "greaterThan", 1), lookup)).toBeUndefined();
  });
  it("is the worst of all, and the nearest of any", () => {
    const [near, far] = [number("gap", "greaterThan", 1.5), number("gap", "greaterThan", 3)];
    expect(missOf(all(near, far), lookup)?.leaf).toBe(far);
    expect(missOf(any(near, far), lookup)?.leaf).toBe(near);
    expect(missOf(any(near, word("equal", "plain")), lookup)).toBeUndefined();
    expect(missOf(all(near, word("equal", "roller")), lookup)?.relative).toBe(-Infinity);
  });
});
