// Times how soon a report follows a change of a build: part of `npm run bench`. Medians, and ratios within one run.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { evaluate, readBuildText, refineBuild, withField } from "trialfit";
import { bundleSize } from "../bundle/bundleSize.ts";

const NAME = "harrow-eight";
const RUNS = 5;
const path = new URL(`../../packages/core/demo/${NAME}.yaml`, import.meta.url);
const text = readFileSync(path, "utf8");

/** Fields to change, from one that little rests on to those that nearly all rests on: the nth change of each. */
const changes = {
  "block.honeAngle": (n: number) => `${40 + n / 100} deg`,
  "crankshaft.stroke": (n: number) => `${(3.622 + n / 10_000).toFixed(4)} in ± 0.0005`,
  "block.bore": (n: number) => `${(104 + n / 1_000).toFixed(3)} mm ± 0.008`,
} as const;

const timed = async (run: () => unknown): Promise<number> => {
  const begun = performance.now();
  await run();
  return performance.now() - begun;
};

function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)]!;
}

/** A whole first evaluation, in a process of its own: nothing is remembered or compiled. */
function firstEvaluation(): number {
  const script = fileURLToPath(import.meta.url);
  return Number(execFileSync(process.execPath, [script, "first"], { encoding: "utf8" }));
}

async function run(): Promise<void> {
  const build = readBuildText(text, NAME);
  const rows: Record<string, object> = {};
  const times = new Map<string, readonly number[]>();
  times.set("first evaluation, in a new process", Array.from({ length: 3 }, firstEvaluation));
  await evaluate(build);
  const again: number[] = [];
  for (let n = 0; n < RUNS * 4; n += 1) again.push(await timed(() => evaluate(build)));
  times.set("the same build again", again);
  for (const [field, change] of Object.entries(changes)) {
    const [read, first, last, steps]: [number[], number[], number[], number[]] = [[], [], [], []];
    for (let n = 1; n <= RUNS; n += 1) {
      const begun = performance.now();
      const changed = withField(build, field, change(n));
      read.push(performance.now() - begun);
      let count = 0;
      for await (const _ of refineBuild(changed)) {
        if (count === 0) first.push(performance.now() - begun);
        count += 1;
      }
      last.push(performance.now() - begun);
      steps.push(count);
    }
    times.set(`${field} changed: read`, read);
    times.set(`${field} changed: first report`, first);
    times.set(`${field} changed: last of ${median(steps)} reports`, last);
  }
  const base = median(again);
  for (const [task, all] of times)
    rows[task] = {
      "ms (median)": Number(median(all).toFixed(1)),
      ratio: Number((median(all) / base).toFixed(2)),
      runs: all.length,
    };
  console.log(`${NAME} on Node ${process.versions.node}, ratio to the same build again`);
  console.table(rows);
  const sizes = Object.fromEntries(
    await Promise.all(
      (["index", "evaluator"] as const).map(async (entry) => {
        const { script, gzip } = await bundleSize(entry);
        return [entry, { "kB minified": Math.round(script / 1000), "kB gzip": Math.round(gzip / 1000) }];
      }),
    ),
  );
  console.log("Bundles for a page");
  console.table(sizes);
}

if (process.argv[2] === "first") console.log(await timed(() => evaluate(readBuildText(text, NAME))));
else await run();
