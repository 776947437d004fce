// Times the search of parts lists: `npm run bench`. Every search runs in a process of its own, since quantities that
// were derived once are remembered; medians of several. Raw is what evaluating one combination after the other does.
import { spawnSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ruleFiles } from "@trialfit/rules";
import { readPartsListText } from "../../packages/core/src/choose/lists/readPartsListText.ts";
import type { Aim } from "../../packages/core/src/choose/search/Objective.ts";
import { search } from "../../packages/core/src/choose/search/search.ts";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { compileRules } from "../../packages/core/src/judge/compileRules.ts";
import { judgeBuild } from "../../packages/core/src/judge/judgeBuild.ts";
import { readBuildText } from "../../packages/core/src/read/readBuild.ts";

const ROUNDS = 3;
/** Parts of each of the ten kinds; eight make 10^9 combinations. */
const SIZES = [4, 8, 16, 64, 1000];
const OBJECTIVES = ["cost", "mass", "time", "margin"] as const;
/** Combinations evaluated one after the other. */
const RAW = 12;

const demo = new URL("../../packages/core/demo/", import.meta.url);
const textOf = (name: string) => readFileSync(new URL(name, demo), "utf8");
const fixed = readBuildText(textOf("larkspur-hill.yaml"), "larkspur-hill.yaml");

/** So many parts of every list, evenly spread over it. */
function listsOf(size: number) {
  return readdirSync(new URL("parts", demo)).map((file) => {
    const list = readPartsListText(textOf(`parts/${file}`), file);
    const step = Math.max(1, list.parts.length / size);
    const parts = list.parts.filter(
      (_, index) => Math.floor(index / step) !== Math.floor((index - 1) / step),
    );
    return { ...list, parts: parts.slice(0, size) };
  });
}

async function time(size: number, objective: Aim, front: readonly Aim[]) {
  const candidates = listsOf(size);
  const begun = performance.now();
  const result = await search({ fixed, candidates, objective, front, stage: "choose" });
  const seconds = (performance.now() - begun) / 1000;
  if (!result.complete) throw new Error("the search did not come to its end");
  const { combinations, effort, best } = result;
  return { seconds, combinations, ...effort, best: best.length, front: result.front?.length ?? 0 };
}

/** Combinations a second when each is evaluated whole. */
async function raw(): Promise<number> {
  const rules = compileRules(ruleFiles).filter(
    ({ file }) => file.otherwise.weight === "stop" && file.stages.includes("choose"),
  );
  const lists = listsOf(1000);
  const begun = performance.now();
  for (let index = 0; index < RAW; index += 1) {
    const keys = lists.map(({ part }) => part.key);
    const values = new Map([...fixed.values].filter(([path]) => !keys.includes(path.split(".")[0]!)));
    for (const { parts, keep } of lists) {
      for (const path of keep) if (fixed.values.has(path)) values.set(path, fixed.values.get(path)!);
      for (const [path, value] of parts[(index * 37) % parts.length]!.values) values.set(path, value);
    }
    await judgeBuild(withDefaults({ ...fixed, values }), rules, quantities, []);
  }
  return RAW / ((performance.now() - begun) / 1000);
}

const asked = process.argv[2];
if (asked === "raw") process.stdout.write(JSON.stringify(await raw()));
else if (asked !== undefined) {
  const { size, objective, front } = JSON.parse(asked) as { size: number; objective: Aim; front: Aim[] };
  process.stdout.write(JSON.stringify(await time(size, objective, front)));
} else {
  const run = <T>(what: string): T => {
    const { stdout, status, stderr } = spawnSync(process.execPath, [fileURLToPath(import.meta.url), what], {
      encoding: "utf8",
    });
    if (status !== 0) throw new Error(`${what}: ${stderr}`);
    return JSON.parse(stdout) as T;
  };
  const rate = run<number>("raw");
  const cases = [
    ...OBJECTIVES.flatMap((objective) => SIZES.map((size) => ({ size, objective, front: [] as Aim[] }))),
    { size: 8, objective: "cost" as const, front: ["cost", "margin"] as Aim[] },
  ];
  const rows = cases.map((one) => {
    const rounds = Array.from({ length: ROUNDS }, () =>
      run<Awaited<ReturnType<typeof time>>>(JSON.stringify(one)),
    );
    const median = rounds.sort((a, b) => a.seconds - b.seconds)[Math.floor(ROUNDS / 2)]!;
    const { seconds, combinations, steps, judged } = median;
    return {
      objective:
        one.front.length > 0
          ? `${one.objective}, front of ${one.front.length} aims (${median.front})`
          : one.objective,
      "parts a kind": one.size === 1000 ? "all" : one.size,
      combinations: combinations.toExponential(2),
      "s (median)": Number(seconds.toFixed(2)),
      "combinations/s": (combinations / seconds).toExponential(1),
      "× one by one": (combinations / seconds / rate).toExponential(1),
      "choices looked at": steps,
      "verdicts worked out": judged,
    };
  });
  console.log(`one by one, through json-rules-engine: ${rate.toFixed(2)} combinations/s (${RAW} evaluated)`);
  console.table(rows);
}
