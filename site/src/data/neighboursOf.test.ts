import { describe, expect, it } from "vitest";
import { rules } from "./catalog.ts";
import { neighboursOf } from "./neighboursOf.ts";

const near = (id: string) =>
  neighboursOf(rules.find(({ file }) => file.id === id)!).map(({ file }) => file.id);

describe("rules near a rule", () => {
  it.each([
    ["flywheel-threads-hold-preload", "tapped-threads-hold-preload"],
    ["rod-clears-cylinder-bottom", "aluminium-rod-clears-cylinder-bottom"],
    ["main-bearing-unit-load", "rod-bearing-unit-load"],
    ["top-ring-gap-not-too-small", "top-ring-gap-not-too-wide"],
    ["bores-round", "big-ends-round"],
  ])("of %s: %s is among the first three", (id, relative) => {
    expect(near(id).slice(0, 3)).toContain(relative);
  });
  it("are six for every rule, never itself", () => {
    expect(rules.length).toBeGreaterThan(100);
    for (const { file } of rules) {
      expect(near(file.id)).toHaveLength(6);
      expect(near(file.id)).not.toContain(file.id);
    }
  });
});
