// Times the fast ways to verdicts whose quantities are not there yet: `npm run bench`. How much sooner a build is judged
// again after one changed dimension, and what a build costs in a walk over all combinations of parts lists. Processor
// time; everything is derived with its band.
import { ruleFiles } from "@trialfit/rules";
import {
  type Build,
  ChangingJudge,
  cheapestFirst,
  compileRules,
  type FieldValue,
  GradualJudge,
  type PartKind,
} from "trialfit";
import { generator } from "../differential/generator.ts";
import { median } from "./rounds.ts";
import { demoBuild as build, DEMO, EVERY, isSize, sampledSizes, sizePaths } from "./sampledSizes.ts";

const rules = cheapestFirst(compileRules(ruleFiles));

function seconds(run: () => void): number {
  const before = process.cpuUsage();
  run();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
}

function scaled(value: FieldValue, scale: number): FieldValue {
  if (value.kind !== "dimension" || !isSize(value)) return value;
  const { nominal, low, high } = value;
  return { ...value, nominal: nominal * scale, low: low * scale, high: high * scale };
}

/** The same build with every size moved by parts in a thousand million: nothing is remembered of it. */
const anew = (part: number): Build => ({
  ...build,
  values: new Map([...build.values].map(([path, value]) => [path, scaled(value, 1 + part * 1e-9)])),
});

const WHOLE = 3;

function timeChanges(): void {
  const whole = Array.from({ length: WHOLE }, (_, n) =>
    seconds(() => {
      new ChangingJudge(anew(n + 1), rules);
    }),
  );
  const judge = new ChangingJudge(build, rules);
  const changes = sampledSizes.map((path) => {
    const before = judge.counts;
    const took = seconds(() => judge.set(path, scaled(build.values.get(path)!, 1 + 1e-7)));
    return { path, took, derived: judge.counts.derived - before.derived };
  });
  const full = median(whole);
  const sorted = changes.map(({ took }) => took).sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))]!;
  console.log(
    `${DEMO}: all ${rules.length} verdicts anew ${(1e3 * full).toFixed(0)} ms; after a change of one of ${sampledSizes.length} dimensions (each ${EVERY}th of ${sizePaths.length})`,
  );
  console.table(
    Object.fromEntries(
      [0.25, 0.5, 0.75, 0.9, 1].map((share) => [
        `${100 * share} % of them at most`,
        {
          ms: Number((1e3 * at(share)).toFixed(2)),
          "times sooner": Math.round(full / Math.max(at(share), 1e-6)),
        },
      ]),
    ),
  );
  const slowest = changes.reduce((a, b) => (b.took > a.took ? b : a));
  console.log(
    `${changes.filter(({ took }) => full >= 10 * took).length} of ${changes.length} at least 10 times sooner; slowest ${slowest.path}, ${slowest.derived} quantities`,
  );
}

/** Variations of the parts of the demo build, each with sizes of its own. */
function variations(parts: readonly string[], count: number): readonly PartKind[] {
  const random = generator(17);
  return parts.map((name) => ({
    name,
    options: Array.from({ length: count }, () => ({
      values: new Map(
        [...build.values]
          .filter(([path]) => path.startsWith(`${name}.`))
          .map(([path, value]): [string, FieldValue] => [path, scaled(value, 1 + 0.01 * (random() - 0.5))]),
      ),
    })),
  }));
}

/** Parts from which no cycle and no swept rod is worked out, and those from which nearly all is. */
const LIGHT = ["headGasket", "ringSet", "valveSpring", "flywheel", "damper", "headFastener", "mainFastener"];
const HEAVY = ["connectingRod", "piston"];

/** What is derived rests on few kinds each, so that it is shared by ever more builds as lists grow. */
const LISTS: readonly (readonly [count: number, parts: readonly string[]])[] = [
  [5, [...LIGHT, "starter"]],
  [3, [...HEAVY, "headGasket", "valveSpring", "flywheel"]],
  [4, [...HEAVY, "rodBearing", ...LIGHT]],
];

/** Walks over every combination, and has every verdict of every whole build: nothing is cut. */
function timeWalk(count: number, parts: readonly string[]): object {
  const each: number[] = [];
  let judge: GradualJudge | undefined;
  const took = seconds(() => {
    const walked = new GradualJudge({ fixed: build, kinds: variations(parts, count), rules });
    judge = walked;
    let since = performance.now();
    const walk = (level: number): void => {
      for (let option = 0; option < count; option += 1) {
        walked.choose(level, option);
        if (level + 1 < parts.length) walk(level + 1);
        else {
          walked.verdicts();
          const now = performance.now();
          each.push(now - since);
          since = now;
        }
      }
    };
    walk(0);
  });
  const again = seconds(() => {
    for (let option = 0; option < count; option += 1)
      for (let other = 0; other < count; other += 1) {
        judge!.choose(0, option);
        for (let level = 1; level < parts.length; level += 1) judge!.choose(level, other);
        judge!.verdicts();
      }
  });
  const { derived } = judge!.counts;
  const micro = (value: number) => Number(value.toFixed(1));
  return {
    builds: each.length,
    "quantities derived": derived,
    "s in all": Number(took.toFixed(1)),
    "µs a build, median": micro(1e3 * median(each)),
    mean: micro((1e6 * took) / each.length),
    "µs a build far from the last, all known": micro((1e6 * again) / count ** 2),
  };
}

timeChanges();
console.log(
  `Walks over lists of variations of the parts of ${DEMO}: every verdict of every whole build, all derivations counted`,
);
console.table(
  Object.fromEntries(
    LISTS.map(([count, parts]) => [`${count} each of ${parts.join(", ")}`, timeWalk(count, parts)]),
  ),
);
