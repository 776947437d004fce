import { ruleFiles } from "@trialfit/rules";
import { type CompiledRule, compileRule, compileRules, type Fact } from "trialfit";
import { describe, expect, it } from "vitest";
import { compileColumns } from "../../packages/core/src/compile/compileColumns.ts";
import { compileSlots } from "../../packages/core/src/compile/compileSlots.ts";
import { drawFacts, drawnFrom } from "./drawnFacts.ts";
import { fastAgainstEngine } from "./fastAgainstEngine.ts";
import { generator } from "./generator.ts";
import { randomRule, randomSight } from "./randomRules.ts";

/** Pairs of rule and build, half by the catalog's rules and half by drawn ones; `npm run prove` takes a million. */
const PAIRS = Number(process.env.TRIALFIT_FAST_PAIRS ?? 40_000);
const DRAWN_RULES = 400;

function* catalogBuilds(rules: readonly CompiledRule[], count: number, start: number) {
  const [from, random] = [drawnFrom(rules), generator(start)];
  for (let build = 0; build < count; build += 1) yield drawFacts(from, random);
}

function* drawnBuilds(random: () => number, count: number) {
  for (let build = 0; build < count; build += 1)
    yield new Map(
      [...randomSight(random)].flatMap(([name, seen]): [string, Fact][] => {
        if (seen.kind === "nothing") return [];
        if (seen.kind === "word") return [[name, seen]];
        const [low, nominal, high] = [seen.low, seen.nominal, seen.high].map((mm) => mm / 1000);
        return [[name, { kind: "band", low: low!, nominal: nominal!, high: high!, missing: [] }]];
      }),
    );
}

const WORDS = ["holds", "fails", "open", "unknown", "not-applicable"];

describe("compiled rules say what json-rules-engine says", () => {
  it.each(["catalog", "drawn"] as const)(`by the rules of the %s`, { timeout: 3_600_000 }, async (which) => {
    const random = generator(20_270_101);
    const rules =
      which === "catalog"
        ? compileRules(ruleFiles)
        : Array.from({ length: DRAWN_RULES }, (_, index) => compileRule(randomRule(random, `rule-${index}`)));
    const count = Math.ceil(PAIRS / 2 / rules.length);
    const builds = which === "catalog" ? catalogBuilds(rules, count, 7) : drawnBuilds(random, count);
    const tally = await fastAgainstEngine(rules, builds);
    expect(tally.differences).toEqual([]);
    expect(tally.compared).toBe(count * rules.length);
    expect(tally.compared).toBeGreaterThanOrEqual(PAIRS / 2);
    expect([tally.bySlots, tally.byColumns]).toEqual([tally.compared, tally.compared]);
    for (const word of WORDS) expect(tally.words[word], word).toBeGreaterThan(tally.compared / 200);
    if (process.env.TRIALFIT_FAST_PAIRS !== undefined) console.log(which, tally);
  });
});

describe("the comparison notices", () => {
  const rules = compileRules(ruleFiles).slice(0, 60);
  const builds = () => catalogBuilds(rules, 40, 11);

  it("a closure that says something else", async () => {
    const slots = compileSlots(rules);
    const spoiled = slots.judges as (() => number)[];
    const [index, honest] = [17, spoiled[17]!];
    spoiled[index] = () => Math.min(honest(), 3);
    const { differences } = await fastAgainstEngine(rules, builds(), slots);
    expect(differences.length).toBeGreaterThan(0);
    expect(differences[0]).toContain(rules[index]!.file.id);
  });
  it("columns of rules of which one reads its operator loosely", async () => {
    const [file] = [rules[0]!.file];
    const strict = compileRule({
      ...file,
      when: undefined,
      limits: undefined,
      requires: { fact: "crankshaft.stroke", operator: "lessThan", value: "90 mm" },
      otherwise: { ...file.otherwise, do: "Nothing." },
      because: "A rule of this test.",
      confirm: undefined,
    } as never);
    const loose = {
      ...strict,
      requires: { ...strict.requires, operator: "lessThanInclusive" },
    } as CompiledRule;
    const on = new Map<string, Fact>([
      ["crankshaft.stroke", { kind: "band", low: 0.09, nominal: 0.09, high: 0.09, missing: [] }],
    ]);
    const { differences } = await fastAgainstEngine([strict], [on], undefined, compileColumns([loose]));
    expect(differences).toEqual([`${file.id}: the engine says fails, columns holds`]);
  });
  it("verdicts that were not given by the compiled rules", async () => {
    const slots = compileSlots(rules);
    const idle = { ...slots, judge: () => new Uint8Array(rules.length), judged: 0 };
    const { bySlots, compared, differences } = await fastAgainstEngine(rules, builds(), idle);
    expect(bySlots).not.toBe(compared);
    expect(differences.length).toBeGreaterThan(0);
  });
});
