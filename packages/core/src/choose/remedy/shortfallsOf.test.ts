import { describe, expect, it } from "vitest";
import { growthOf, worstShortfalls } from "./shortfallsOf.ts";

/** Of things whose size is 1. */
const short = (values: Record<string, number>) =>
  new Map(Object.entries(values).map(([fact, one]) => [fact, { short: one, size: 1 }]));

describe("what a rule lacks", () => {
  it.each([
    ["more of the same", { gap: 1 }, { gap: 1.05 }, { by: 0.05, slight: false }],
    ["less", { gap: 1 }, { gap: 0.5 }, undefined],
    ["next to nothing more", { gap: 1 }, { gap: 1.00001 }, undefined],
    ["a little more", { gap: 1 }, { gap: 1.005 }, { by: 0.005, slight: true }],
    ["much more of little", { gap: 0.0001 }, { gap: 0.0002 }, { by: 1, slight: true }],
    [
      "something that lacked nothing",
      { gap: 1, ratio: 0 },
      { gap: 0.5, ratio: 2 },
      { by: Infinity, slight: false },
    ],
    ["what is missing stays missing", { kind: Infinity }, { kind: Infinity }, undefined],
    ["what was known is missing", { kind: 1 }, { kind: Infinity }, { by: Infinity, slight: false }],
  ])("%s", (_, before, after, growth) => {
    const found = growthOf(short(before), short(after));
    expect(found?.slight).toBe(growth?.slight);
    if (growth !== undefined) expect(found!.by).toBeCloseTo(growth.by, 9);
  });
  it("is at several places the most of each", () => {
    const worst = worstShortfalls([short({ gap: 1, ratio: 0 }), short({ gap: 0.2, ratio: 3 })]);
    expect([...worst].map(([fact, one]) => [fact, one.short])).toEqual([
      ["gap", 1],
      ["ratio", 3],
    ]);
  });
});
