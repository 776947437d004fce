import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { type Build, type CompiledRule, compileRules, quantities, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { RootFinder } from "../../packages/core/src/derive/rootsOf.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import type { Verdict } from "../../packages/core/src/judge/Verdict.ts";
import { exactFacts } from "../catalog/exactFacts.ts";
import { generator } from "../differential/generator.ts";

const REMOVALS = 60;
/** Verdicts looked at closer in each removal. */
const LOOKED_AT = 25;

function without(build: Build, paths: ReadonlySet<string>): Build {
  const gone = (path: string) => paths.has(path.replace(/\.place$/, ""));
  return { ...build, values: new Map([...build.values].filter(([path]) => !gone(path))) };
}

/** Without tolerances a verdict is certain as soon as nothing is missing, and nothing is searched. */
const judge = (rules: readonly CompiledRule[], build: Build): Promise<readonly Verdict[]> =>
  judgeAll(rules, exactFacts(build));

/** Fields that the facts of a rule rest on, by the ways that these values allow. */
function rootsOf(rule: CompiledRule, finder: RootFinder): ReadonlySet<string> {
  return new Set(
    rule.facts.flatMap((fact) => [...finder.rootsOf(fact)].map((path) => path.replace(/\.place$/, ""))),
  );
}

const rules = compileRules(ruleFiles.filter(({ confirm }) => confirm === undefined));
const byId = new Map(rules.map((rule) => [rule.file.id, rule]));

describe.each(["harrow-eight", "larkspur-hill"])("fields left out of %s", (name) => {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  const build = readBuildText(readFileSync(path, "utf8"), name);

  it("what an unknown verdict names settles it, and rests under the rule", { timeout: 600_000 }, async () => {
    const random = generator(20_261_130);
    const whole = new Map((await judge(rules, build)).map((one) => [one.rule, one]));
    const paths = [...build.values.keys()].filter((one) => !one.endsWith(".place"));
    let settled = 0;
    let named = 0;
    for (let removal = 0; removal < REMOVALS; removal += 1) {
      const share = random() ** 2;
      const gone = new Set(paths.filter(() => random() < share));
      const bare = without(build, gone);
      const given = withDefaults(bare);
      const finder = new RootFinder(
        quantities,
        (path) => given.has(path),
        () => false,
      );
      const verdicts = await judge(rules, bare);
      const looked = verdicts.filter((one) => one.verdict === "unknown" && one.reasons.length === 0);
      for (const verdict of looked.sort(() => random() - 0.5).slice(0, LOOKED_AT)) {
        const rule = byId.get(verdict.rule)!;
        const roots = rootsOf(rule, finder);
        for (const one of verdict.missing) {
          expect(bare.values.has(one), `${verdict.rule} names ${one}, which is there`).toBe(false);
          expect(roots.has(one), `${verdict.rule} names ${one}, which it does not rest on`).toBe(true);
          named += 1;
        }
        expect(verdict.missing.length, verdict.rule).toBeGreaterThan(0);
        // A field that the demo never had, as a lift table where it gives durations, cannot be put back.
        const restorable = verdict.missing.every((one) => build.values.has(one));
        if (!restorable || whole.get(verdict.rule)?.verdict === "unknown") continue;
        const restored = without(build, new Set([...gone].filter((one) => !verdict.missing.includes(one))));
        const [again] = await judge([rule], restored);
        // Values that do not go together, as a V without its bank angle, are said so and are not missing.
        if (again!.reasons.length > 0) continue;
        expect(again!.verdict, `${verdict.rule} with ${verdict.missing.join()} given`).not.toBe("unknown");
        settled += 1;
      }
    }
    expect(settled).toBeGreaterThan(500);
    expect(named).toBeGreaterThan(settled);
  });
});
