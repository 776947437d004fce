import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { BestFew, compareIn, type Entry, Front } from "./Standings.ts";

const order = [1, 0];
const entries = fc.array(
  fc.record({
    chosen: fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })),
    score: fc.integer({ min: 0, max: 4 }),
    vector: fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })),
  }),
  { maxLength: 30 },
);
/** Each choice once: two results for one are not compared. */
const eachOnce = (all: readonly Entry[]) => [...new Map(all.map((one) => [one.chosen.join(), one])).values()];

describe("the best few", () => {
  test.prop([entries, fc.integer({ min: 0, max: 5 }), fc.nat()])(
    "are the same in whatever order combinations come",
    (all, count, turn) => {
      const once = eachOnce(all);
      const few = (list: readonly Entry[]) => {
        const best = new BestFew(count, compareIn(order));
        for (const one of list) best.add(one);
        return best.entries;
      };
      const at = once.length === 0 ? 0 : turn % once.length;
      expect(few([...once.slice(at), ...once.slice(0, at)])).toEqual(few(once));
      const sorted = [...once].sort((a, b) => a.score - b.score || compareIn(order)(a.chosen, b.chosen));
      expect(few(once)).toEqual(sorted.slice(0, count));
    },
  );
  it("exclude a branch only when it cannot come among them", () => {
    const few = new BestFew(1, compareIn(order));
    few.add({ chosen: [2, 2], score: 5, vector: [] });
    expect(few.excludes({ score: 4, chosen: [3, 3] })).toBe(false);
    expect(few.excludes({ score: 5, chosen: [3, 1] })).toBe(false);
    expect(few.excludes({ score: 5, chosen: [2, 2] })).toBe(true);
    expect(few.excludes({ score: 5.1, chosen: [0, 0] })).toBe(true);
  });
});

describe("the front", () => {
  test.prop([entries, fc.nat()])("is the same in whatever order combinations come", (all, turn) => {
    const once = eachOnce(all);
    const front = (list: readonly Entry[]) => {
      const kept = new Front(compareIn(order));
      for (const one of list) kept.add(one);
      return kept.sorted();
    };
    const at = once.length === 0 ? 0 : turn % once.length;
    expect(front([...once.slice(at), ...once.slice(0, at)])).toEqual(front(once));
    const beats = (a: Entry, b: Entry) => a.vector.every((value, index) => value <= b.vector[index]!);
    for (const one of once) expect(front(once).some((kept) => beats(kept, one))).toBe(true);
    for (const a of front(once)) for (const b of front(once)) expect(a === b || !beats(a, b)).toBe(true);
  });
  it("excludes what something covers, and of equals what comes later", () => {
    const front = new Front(compareIn(order));
    front.add({ chosen: [1, 1], score: 0, vector: [2, 2] });
    expect(front.excludes({ vector: [2, 3], chosen: [0, 0] })).toBe(true);
    expect(front.excludes({ vector: [2, 2], chosen: [0, 1] })).toBe(false);
    expect(front.excludes({ vector: [2, 2], chosen: [1, 1] })).toBe(true);
    expect(front.excludes({ vector: [1, 9], chosen: [9, 9] })).toBe(false);
  });
});
