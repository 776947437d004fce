import { readFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";
import { ruleFiles } from "@trialfit/rules";
import { evaluate as evaluateMain } from "trialfit";
import { describe, expect, it } from "vitest";
import { evaluate, type RuleCatalog, readBuild, refineBuild } from "../../packages/core/src/evaluator.ts";
import { bundleSize } from "./bundleSize.ts";

/** Compressed bytes that may not be passed; lower it when the bundle gets smaller. */
const MOST = { evaluator: 262_000, index: 621_000 };

const parts = {
  block: { cylinders: "4", bore: "88.50 mm ± 0.01", deckHeight: "227.00 mm ± 0.05" },
  crankshaft: { stroke: "94 mm ± 0.05" },
  piston: { compressionHeight: "31.2 mm ± 0.03" },
};
const build = readBuild({ trialfit: "1", name: "Bench (invented)", ...parts });

describe("the evaluator for a page", () => {
  it("is small, without the catalog, YAML and generated code; the main entry has all", async () => {
    const alone = await bundleSize("evaluator");
    const main = await bundleSize("index");
    expect(alone.gzip).toBeLessThan(MOST.evaluator);
    expect(main.gzip).toBeLessThan(MOST.index);
    const within = (text: string) => ruleFiles.filter(({ because }) => text.includes(because)).length;
    expect(within(main.text)).toBeGreaterThan(100);
    expect(within(alone.text)).toBe(0);
    const ofYaml = ({ inputs }: typeof alone) =>
      inputs.filter((path) => path.includes("node_modules/yaml/")).length;
    expect(ofYaml(main)).toBeGreaterThan(0);
    expect(ofYaml(alone)).toBe(0);
    expect(alone.inputs.filter((path) => /zod\/.*\/locales\/(?!en\.)/.test(path))).toEqual([]);
  });

  it("judges by the catalog as data as the main entry does by its own", async () => {
    const path = new URL("../../rules/src/generated/catalog.json", import.meta.url);
    const catalog = JSON.parse(readFileSync(path, "utf8")) as RuleCatalog;
    expect(catalog.rules.length).toBe(ruleFiles.length);
    const report = await evaluateMain(build, { sets: ["street"] });
    expect(report.verdicts.length).toBeGreaterThan(300);
    expect(isDeepStrictEqual(await evaluate(build, catalog, { sets: ["street"] }), report)).toBe(true);
    let last: unknown;
    for await (const one of refineBuild(build, catalog, { sets: ["street"] })) last = one.report;
    expect(isDeepStrictEqual(last, report)).toBe(true);
  });
});
