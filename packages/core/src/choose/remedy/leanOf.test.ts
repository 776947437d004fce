import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { seeded } from "../../derive/seeded.ts";
import { compileRules } from "../../judge/compileRules.ts";
import { decide, type Lookup } from "../../judge/decide.ts";
import { withLimits } from "../../judge/decideRule.ts";
import { decidingFacts } from "../../judge/decidingFacts.ts";
import type { Fact } from "../../judge/Fact.ts";
import { factType } from "../../judge/factCatalog.ts";
import { leanOf } from "./leanOf.ts";

const rules = compileRules(ruleFiles);
const DRAWS = 40;

/** Facts near the numbers and words with which a rule compares them, some of them missing. */
function drawFacts(rule: (typeof rules)[number], number: number): Lookup {
  const random = seeded(7, rule.file.id, number);
  const scales = rule.limits.flatMap((limit) => [limit.value, ...limit.cases.map((one) => one.value)]);
  const facts = new Map<string, Fact>(
    [...decidingFacts(rule)].map((name): [string, Fact] => {
      if (random() < 0.03) return [name, { kind: "missing", missing: [name] }];
      const type = factType(name);
      if (type?.kind === "word") {
        const words = type.options;
        return [name, { kind: "word", word: words[Math.floor(random() * words.length)]! }];
      }
      const scale = scales[Math.floor(random() * scales.length)] ?? 1;
      const nominal = random() < 0.1 ? scale : scale * (0.5 + random());
      const width = random() < 0.3 ? 0 : 0.2 * Math.abs(scale) * random();
      return [name, { kind: "band", low: nominal - width, nominal, high: nominal + width, missing: [] }];
    }),
  );
  return (name) => facts.get(name)!;
}

/** How often the sign agrees and disagrees with what is decided. */
function count(lean: typeof leanOf) {
  const seen = { holds: 0, not: 0, wrong: 0 };
  for (const rule of rules)
    for (let number = 0; number < DRAWS; number += 1) {
      const lookup = drawFacts(rule, number);
      const { surely } = decide(rule.requires, withLimits(rule, lookup));
      if (surely) seen.holds += 1;
      else seen.not += 1;
      if (lean(rule, lookup) >= 0 !== surely) seen.wrong += 1;
    }
  return seen;
}

describe("how far a rule is from holding", () => {
  it("is not negative just where what it requires surely holds, for every rule of the catalog", () => {
    const { holds, not, wrong } = count(leanOf);
    expect(wrong).toBe(0);
    expect(holds).toBeGreaterThan(1000);
    expect(not).toBeGreaterThan(1000);
  });
  it("a sign that errs is seen", () => {
    expect(count((rule, lookup) => leanOf(rule, lookup) - 0.01).wrong).toBeGreaterThan(10);
  });
});
