import { describe, expect, it } from "vitest";
import plainCopy from "./plainCopy.ts";

class Condition {
  readonly all: readonly unknown[];
  constructor(all: readonly unknown[]) {
    this.all = all;
  }
  count(): number {
    return this.all.length;
  }
}

describe("a plain copy", () => {
  it("is the same tree in other objects, which keep what they were made from", () => {
    const tree = { name: "a", list: [1, { deep: new Condition([{ fact: "x" }, null]) }], none: undefined };
    const copy = plainCopy(tree) as typeof tree;
    expect(copy).toEqual(tree);
    const [, first] = tree.list as [number, { deep: Condition }];
    const [, second] = copy.list as [number, { deep: Condition }];
    expect(second.deep).toBeInstanceOf(Condition);
    expect(second.deep.count()).toBe(2);
    expect(second.deep).not.toBe(first.deep);
    expect(second.deep.all[0]).not.toBe(first.deep.all[0]);
  });

  it("refuses what is no tree", () => {
    for (const one of [new Map(), new Set(), new Date(), /a/])
      expect(() => plainCopy({ one })).toThrow(/no tree/);
  });
});
