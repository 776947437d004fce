import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import { readBuildText } from "../read/readBuild.ts";
import { compileRules } from "./compileRules.ts";
import { judgeBuild } from "./judgeBuild.ts";
import { sampleVerdicts } from "./sampleVerdicts.ts";

const DRAWS = 30;
/** The search for a band stops when it gains less than this share of the spread. */
const SETTLED = 1e-4;

describe.each(["harrow-eight", "larkspur-hill"])("engines of %s drawn within the tolerances", (name) => {
  it("all hold where the rule surely holds, none where it fails, and stay within the worst case", async () => {
    const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
    const values = withDefaults(readBuildText(text, name));
    const rules = compileRules(ruleFiles);
    const { derivations, judged } = await judgeBuild(values, rules, quantities, []);
    const drawn = sampleVerdicts(values, rules, quantities, derivations.keys(), { draws: DRAWS, seed: 3 });

    const shares = (word: string) =>
      judged
        .filter(({ verdict }) => verdict.verdict === word)
        .map(({ verdict }) => [verdict.rule, drawn.rules.get(verdict.rule)?.share] as const);
    expect(shares("holds").length).toBeGreaterThan(30);
    expect(shares("holds").filter(([, share]) => share !== 1)).toEqual([]);
    expect(shares("fails").filter(([, share]) => share !== 0)).toEqual([]);
    expect(shares("not-applicable").filter(([, share]) => share !== undefined)).toEqual([]);

    const outside: string[] = [];
    for (const [id, { least, greatest, engines }] of drawn.quantities) {
      const band = derivations.get(id)!;
      expect(engines, id).toBe(DRAWS);
      if (band.state !== "value") continue;
      const slack =
        SETTLED * (band.high - band.low) + 1e-9 * Math.max(Math.abs(band.low), Math.abs(band.high));
      if (least < band.low - slack || greatest > band.high + slack)
        outside.push(`${id}: ${least} to ${greatest} is outside of ${band.low} to ${band.high}`);
    }
    expect(outside).toEqual([]);
    expect(drawn.quantities.size).toBeGreaterThan(80);
  }, 600_000);
});
