import { ruleFiles, sources } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";

describe("the rule catalog", () => {
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
  it("is large enough to be worth browsing", () => {
    expect(ruleFiles.length).toBeGreaterThanOrEqual(30);
    expect(quantities.size).toBeGreaterThanOrEqual(40);
  });
});
