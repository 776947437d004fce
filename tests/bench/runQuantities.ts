// Times what a full build's quantities cost: `npm run bench`. Medians of several runs, ratios within one run. Each
// run gets a build that was not seen before, since what was derived once is remembered.
import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { Bench } from "tinybench";
import { deriveAll } from "../../packages/core/src/derive/deriveAll.ts";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { evaluate } from "../../packages/core/src/evaluate.ts";
import { compileRules } from "../../packages/core/src/judge/compileRules.ts";
import { sampleVerdicts } from "../../packages/core/src/judge/sampleVerdicts.ts";
import type { FieldValue } from "../../packages/core/src/read/FieldValue.ts";
import { readBuildText } from "../../packages/core/src/read/readBuild.ts";

const demos = ["harrow-eight", "larkspur-hill"] as const;

/** Drawn at once for the timing; what 1000 take follows from it. */
const DRAWS = 20;
/** Of the catalog that a full build must give: what is missing or impossible takes next to no time. */
const LEAST_SHARE = 0.9;
let builds = 0;
const rules = compileRules(ruleFiles);
const asked = new Set(rules.flatMap((rule) => rule.facts));

/** The same values moved by parts in a thousand million, other ones at each call. Counts stay whole. */
function anew(values: ReadonlyMap<string, FieldValue>): ReadonlyMap<string, FieldValue> {
  builds += 1;
  const scale = 1 + builds * 1e-9;
  return new Map(
    [...values].map(([path, value]) => {
      if (value.kind !== "dimension" || Number.isInteger(value.nominal)) return [path, value];
      const { nominal, low, high } = value;
      return [path, { ...value, nominal: nominal * scale, low: low * scale, high: high * scale }];
    }),
  );
}

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
  const bench = new Bench({ time: 1_000, iterations: 3, warmup: false });
  let computed = 0;
  const derive = (from: typeof values) => () => {
    const derivations = [...deriveAll(anew(from), quantities, quantities.keys()).values()];
    computed = derivations.filter(({ state }) => state === "value").length;
  };
  const whole = ["all quantities, one value each", "all quantities with their bands"] as const;
  bench
    .add(whole[0], derive(exact))
    .add(whole[1], derive(values))
    .add("evaluate: rules and what they ask for", async () => {
      await evaluate({ ...build, values: anew(build.values) });
    })
    .add("evaluate again, nothing changed", async () => {
      await evaluate(build);
    })
    .add(`${DRAWS} engines drawn: rules and what they ask for`, () => {
      sampleVerdicts(anew(values), rules, quantities, asked, { draws: DRAWS, seed: 1 });
    });
  await bench.run();
  if (computed < LEAST_SHARE * quantities.size)
    throw new Error(`${name}: computed ${computed} of ${quantities.size} quantities, too few to time`);
  const medians = bench.tasks.map((task) => {
    const { result } = task;
    if (!("latency" in result)) throw new Error(`${task.name} was not timed`);
    return { task: task.name, us: result.latency.p50 * 1_000, runs: result.latency.samplesCount };
  });
  const least = Math.min(...medians.map(({ us }) => us));
  for (const { task, us, runs } of medians)
    rows[`${name}: ${task}`] = {
      "µs a build (median)": Math.round(us),
      ...(whole.some((one) => one === task)
        ? { computed, "µs a computed quantity": Number((us / computed).toFixed(1)) }
        : {}),
      ratio: Number((us / least).toFixed(1)),
      runs,
    };
}
console.log(`${quantities.size} quantities in the catalog, Node ${process.versions.node}`);
console.table(rows);
