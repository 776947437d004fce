import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { type Build, type CompiledRule, compileRules, quantities, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { deriveAll } from "../../packages/core/src/derive/deriveAll.ts";
import { RootFinder } from "../../packages/core/src/derive/rootsOf.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { judgeAll } from "../../packages/core/src/judge/judgeAll.ts";
import { lookupOf } from "../../packages/core/src/judge/lookupOf.ts";
import type { Verdict } from "../../packages/core/src/judge/Verdict.ts";
import { randomNumbers } from "../differential/randomRules.ts";

const REMOVALS = 4;
/** Verdicts looked at closer in each removal. */
const LOOKED_AT = 15;

/** Without tolerances a verdict is certain as soon as nothing is missing, and nothing is searched. */
function exact(build: Build): Build {
  const values = new Map(
    [...build.values].map(([path, value]) => [
      path,
      value.kind === "dimension" && value.positions === undefined
        ? { ...value, low: value.nominal, high: value.nominal }
        : value,
    ]),
  );
  return { ...build, values };
}

function without(build: Build, paths: ReadonlySet<string>): Build {
  const gone = (path: string) => paths.has(path.replace(/\.place$/, ""));
  return { ...build, values: new Map([...build.values].filter(([path]) => !gone(path))) };
}

async function judge(rules: readonly CompiledRule[], build: Build): Promise<readonly Verdict[]> {
  const values = withDefaults(build);
  const facts = rules.flatMap((rule) => rule.facts).filter((fact) => quantities.has(fact));
  const derived = deriveAll(values, quantities, new Set(facts));
  return judgeAll(rules, lookupOf(values, derived));
}

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
  const build = exact(readBuildText(readFileSync(path, "utf8"), name));

  it("what an unknown verdict names settles it, and rests under the rule", { timeout: 600_000 }, async () => {
    const random = randomNumbers(20_261_130);
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
        expect(again!.verdict, `${verdict.rule} with ${verdict.missing.join()} given`).not.toBe("unknown");
        settled += 1;
      }
    }
    expect(settled).toBeGreaterThan(10);
    expect(named).toBeGreaterThan(settled);
  });
});
