import { ruleFiles, sources } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { compileRule } from "./compileRule.ts";

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
  it("is large enough to be worth browsing", () => {
    expect(ruleFiles.length).toBeGreaterThanOrEqual(30);
    expect(quantities.size).toBeGreaterThanOrEqual(40);
  });
});
