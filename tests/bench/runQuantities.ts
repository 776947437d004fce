// Times what a full build's quantities cost: `npm run bench`. Medians of many runs, ratios within one run.
import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { Bench } from "tinybench";
import { deriveAll } from "../../packages/core/src/derive/deriveAll.ts";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { evaluate } from "../../packages/core/src/evaluate.ts";
import { compileRules } from "../../packages/core/src/judge/compileRules.ts";
import { sampleVerdicts } from "../../packages/core/src/judge/sampleVerdicts.ts";
import { readBuildText } from "../../packages/core/src/read/readBuild.ts";

const demos = ["harrow-eight", "larkspur-hill"] as const;

/** Drawn at once for the timing; what 1000 take follows from it. */
const DRAWS = 20;
const rules = compileRules(ruleFiles);
const asked = new Set(rules.flatMap((rule) => rule.facts));

const rows: Record<string, object> = {};
for (const name of demos) {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  const build = readBuildText(readFileSync(path, "utf8"), name);
  const values = withDefaults(build);
  const exact = new Map(
    [...values].map(([path, value]) => [
      path,
      value.kind === "dimension" ? { ...value, low: value.nominal, high: value.nominal } : value,
    ]),
  );
  const bench = new Bench({ time: 1_000, iterations: 5, warmupIterations: 1, warmupTime: 100 });
  let count = 0;
  const derive = (from: typeof values) => () => {
    count = deriveAll(from, quantities, quantities.keys()).size;
  };
  bench
    .add("all quantities, one value each", derive(exact))
    .add("all quantities with their bands", derive(values))
    .add("evaluate: rules and what they ask for", async () => {
      await evaluate(build);
    })
    .add(`${DRAWS} engines drawn: rules and what they ask for`, () => {
      sampleVerdicts(values, rules, quantities, asked, { draws: DRAWS, seed: 1 });
    });
  await bench.run();
  if (count < quantities.size) throw new Error(`computed ${count} of ${quantities.size} quantities`);
  const medians = bench.tasks.map((task) => {
    const { result } = task;
    if (!("latency" in result)) throw new Error(`${task.name} was not timed`);
    return { task: task.name, us: result.latency.p50 * 1_000, runs: result.latency.samplesCount };
  });
  const least = Math.min(...medians.map(({ us }) => us));
  for (const { task, us, runs } of medians)
    rows[`${name}: ${task}`] = {
      "µs a build (median)": Math.round(us),
      "µs a quantity": Number((us / quantities.size).toFixed(1)),
      ratio: Number((us / least).toFixed(1)),
      runs,
    };
}
console.log(`${quantities.size} quantities on Node ${process.versions.node}`);
console.table(rows);
