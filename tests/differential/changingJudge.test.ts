import { ruleFiles } from "@trialfit/rules";
import { type Build, ChangingJudge, compileRules, quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { decidingFacts } from "../../packages/core/src/judge/decidingFacts.ts";
import { judgeBuild } from "../../packages/core/src/judge/judgeBuild.ts";
import { generator } from "./generator.ts";
import { changedEntry, cheapRules, demoPair } from "./partLists.ts";

const [one, other] = demoPair;
const rules = cheapRules(compileRules(ruleFiles));
const CHANGES = 60;

async function plainWords(build: Build): Promise<ReadonlyMap<string, string>> {
  const { judged } = await judgeBuild(withDefaults(build), rules, quantities, []);
  return new Map(judged.map(({ rule, verdict }) => [rule.file.id, verdict.verdict]));
}

describe("a build that is changed entry by entry", () => {
  it.each([0, 4])(
    "says after each change what the whole build says, readings up to place %i",
    async (places) => {
      const random = generator(300 + places);
      const paths = [...new Set([...one.values.keys(), ...other.values.keys()])];
      const judge = new ChangingJudge(one, rules);
      let build = one;
      let [compared, turned] = [0, 0];
      for (let change = 0; change < CHANGES; change += 1) {
        const path = paths[Math.floor(random() * paths.length)]!;
        const value = changedEntry(path, [build.values, other.values], random, places);
        const values = new Map(build.values);
        if (value === undefined) values.delete(path);
        else values.set(path, value);
        build = { ...build, values };
        const before = Uint8Array.from(judge.verdicts);
        const said = judge.set(path, value);
        const differing = rules.flatMap((_, rule) => (before[rule] === judge.verdicts[rule] ? [] : [rule]));
        expect(said).toEqual(differing);
        turned += said.length;
        const plain = await plainWords(build);
        for (const [rule, { file }] of rules.entries()) {
          const word = plain.get(file.id) ?? "not-applicable";
          if (judge.word(rule) !== word)
            expect.fail(`${file.id} after ${path}: found ${judge.word(rule)}, expected ${word}`);
          compared += 1;
        }
      }
      expect(compared).toBe(CHANGES * rules.length);
      expect(turned).toBeGreaterThan(10);
    },
  );

  it("works out again only what rests on the change", () => {
    const judge = new ChangingJudge(one, rules);
    const whole = judge.counts;
    expect(whole.judged).toBe(rules.length);
    const value = one.values.get("block.honeAngle");
    if (value?.kind !== "dimension") throw new Error("the demo build has lost its hone angle");
    judge.set("block.honeAngle", { ...value, low: value.low - 0.01 });
    const asking = rules.filter((rule) => decidingFacts(rule).has("block.honeAngle")).length;
    expect(asking).toBeGreaterThan(0);
    expect(judge.counts).toEqual({ derived: whole.derived, judged: whole.judged + asking });
    // The same value again reaches nothing.
    judge.set("block.honeAngle", one.values.get("block.honeAngle"));
    const { judged } = judge.counts;
    expect(judge.set("block.honeAngle", one.values.get("block.honeAngle"))).toEqual([]);
    expect(judge.counts.judged).toBe(judged);
  });
});
