import { describe, expect, it } from "vitest";
import { growthOf, worstShortfalls } from "./shortfallsOf.ts";

const short = (values: Record<string, number>) => new Map(Object.entries(values));

describe("what a rule lacks", () => {
  it.each([
    ["more of the same", { gap: 1 }, { gap: 1.05 }, 0.05],
    ["less", { gap: 1 }, { gap: 0.5 }, 0],
    ["next to nothing more", { gap: 1 }, { gap: 1.00001 }, 0],
    ["something that lacked nothing", { gap: 1, ratio: 0 }, { gap: 0.5, ratio: 2 }, Number.POSITIVE_INFINITY],
    ["what is missing stays missing", { kind: Infinity }, { kind: Infinity }, 0],
    ["what was known is missing", { kind: 1 }, { kind: Infinity }, Number.POSITIVE_INFINITY],
  ])("%s", (_, before, after, growth) => {
    expect(growthOf(short(before), short(after))).toBeCloseTo(growth, 9);
  });
  it("is at several places the most of each", () => {
    expect([...worstShortfalls([short({ gap: 1, ratio: 0 }), short({ gap: 0.2, ratio: 3 })])]).toEqual([
      ["gap", 1],
      ["ratio", 3],
    ]);
  });
});
