import { compileRule } from "trialfit";
import { describe, expect, it } from "vitest";
import { decideRule } from "../../packages/core/src/judge/decideRule.ts";
import type { Fact } from "../../packages/core/src/judge/Fact.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { generator } from "./generator.ts";
import { plainVerdict } from "./plainVerdict.ts";
import { randomRule, randomSight, type Seen } from "./randomRules.ts";

const RULES = 400;
const BUILDS = 250;

/** What a random build shows, as facts in SI. */
function factOf(name: string, seen: Seen | undefined): Fact {
  if (seen?.kind === "word") return { kind: "word", word: seen.word };
  if (seen?.kind !== "band") return { kind: "missing", missing: [name] };
  const { low, nominal, high } = seen;
  return { kind: "band", low: low / 1000, nominal: nominal / 1000, high: high / 1000, missing: [] };
}

describe("verdicts through json-rules-engine", () => {
  it(`equal a plain reading of the rule on ${RULES * BUILDS} random rules and builds`, {
    timeout: 900_000,
  }, async () => {
    const random = generator(20_261_129);
    const files = Array.from({ length: RULES }, (_, index) => randomRule(random, `rule-${index}`));
    const rules = files.map(compileRule);
    const seen = new Map<string, number>();
    let compared = 0;
    for (let build = 0; build < BUILDS; build += 1) {
      const sight = randomSight(random);
      const lookup = (name: string) => factOf(name, sight.get(name));
      const verdicts = await judgeAll(rules, lookup);
      for (const [index, file] of files.entries()) {
        const plain = plainVerdict(file, sight);
        const { verdict, missing } = verdicts[index]!;
        if (plain.verdict !== verdict || plain.missing.join() !== missing.join())
          expect({ verdict, missing, file, sight }).toEqual({ ...plain, file, sight });
        if (decideRule(rules[index]!, lookup) !== verdict)
          expect.fail(`the walk without the engine says otherwise: ${JSON.stringify(file)}`);
        seen.set(verdict, (seen.get(verdict) ?? 0) + 1);
        compared += 1;
      }
    }
    expect(compared).toBe(100_000);
    for (const word of ["holds", "fails", "open", "unknown", "not-applicable"])
      expect(seen.get(word), word).toBeGreaterThan(1000);
  });
  it("would be caught if they read one operator loosely", () => {
    const file = {
      ...randomRule(generator(1), "rule-x"),
      requires: { fact: "block.bore", operator: "lessThan" as const, value: "5 mm" },
    };
    const { when: _, limits: __, ...strict } = file;
    const loose = { ...strict, requires: { ...file.requires, operator: "lessThanInclusive" as const } };
    const sight = new Map<string, Seen>([["block.bore", { kind: "band", low: 4, nominal: 5, high: 5 }]]);
    expect(plainVerdict(strict, sight).verdict).toBe("open");
    expect(plainVerdict(loose, sight).verdict).toBe("holds");
  });
});
