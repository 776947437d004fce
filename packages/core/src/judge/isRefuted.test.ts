import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { expect, it } from "vitest";
import { Deriver } from "../derive/Deriver.ts";
import { quantities } from "../derive/generated/quantities.ts";
import { finish } from "../derive/Steps.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import { readBuildText } from "../read/readBuild.ts";
import { compileRules } from "./compileRules.ts";
import { decideRule } from "./decideRule.ts";
import { isRefuted } from "./isRefuted.ts";
import type { Judged } from "./Judged.ts";
import { judgeBuild } from "./judgeBuild.ts";
import { lookupOf } from "./lookupOf.ts";
import { type Measured, measuring, wordAtNominal } from "./measuring.ts";
import { weightiest } from "./weightiest.ts";

const SHARES = [0.02, 0.3, 0.6, 0.9, 1];

/** What the rule says of all engines within the tolerances, by the whole search. */
function wordOfAll({ values }: Measured, { rule, chain }: Judged) {
  const deriver = Deriver.ofBands(values, quantities, chain);
  for (const fact of rule.facts) if (quantities.has(fact)) finish(deriver.derive(fact));
  return decideRule(rule, lookupOf(values, deriver.results));
}

it.each(["harrow-eight", "larkspur-hill"])(
  "an engine of %s that speaks against a word is one of those searched",
  async (name) => {
    const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
    const values = withDefaults(readBuildText(text, name));
    const { judged } = await judgeBuild(values, compileRules(ruleFiles), quantities, []);
    const open = judged.filter(
      ({ verdict }) => verdict.verdict === "open" && verdict.unmeasured === undefined,
    );
    let [refuted, stood] = [0, 0];
    for (const one of open) {
      const word = finish(wordAtNominal(one, quantities));
      if (word === undefined) continue;
      for (const share of SHARES) {
        const measured = measuring(one, new Map(weightiest(one).map(({ path }) => [path, share])));
        const says = wordOfAll(measured, one);
        if (isRefuted(measured, one, quantities, word)) {
          refuted += 1;
          expect(says, `${one.rule.file.id} to ${share}`).not.toBe(word);
        } else if (says === word) stood += 1;
      }
    }
    expect(refuted).toBeGreaterThan(3);
    expect(stood).toBeGreaterThan(3);
  },
  240_000,
);
