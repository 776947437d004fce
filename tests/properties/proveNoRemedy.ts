import { type Build, changesOf, evaluate, type NoRemedy, withField } from "trialfit";
import { Ladder } from "../../packages/core/src/choose/remedy/Ladder.ts";
import { narrowDimension } from "../../packages/core/src/choose/remedy/narrowDimension.ts";
import { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { onRung, spread, withChange, wordsOf } from "./changedBuild.ts";
import type { Ground } from "./proveRemedy.ts";
import { brokenIn, isBreak } from "./standsWorse.ts";

/** Sizes at which the finding holds whose consequences are looked at, and how close to `nearest` half of them lie. */
const LOOKED = 3;

/** A build whose every tolerance is a part of what it is. */
function narrowed(build: Build, share: number): Build {
  const values = [...withDefaults(build)].map(([path, value]) => [
    path,
    value.kind === "dimension" ? narrowDimension(value, share) : value,
  ]) as [string, typeof build.values extends ReadonlyMap<string, infer V> ? V : never][];
  return { ...build, values: new Map(values) };
}

/** What is not so of the size of which it is said that it would do but breaks something. */
async function faultsOfNearest(ground: Ground, rule: string, { nearest, breaks = [] }: NoRemedy) {
  const { build, before, rules } = ground;
  const stood = new Map(before.verdicts.map((one) => [one.rule, one.verdict]));
  const ids = [rule, ...breaks.map((one) => one.rule)];
  const words = await wordsOf(
    withChange(build, nearest!),
    rules.filter(({ id }) => ids.includes(id)),
  );
  return [
    ...(words.get(rule) === "holds" ? [] : [`${rule} is ${words.get(rule)} at ${nearest!.text}`]),
    ...breaks
      .filter((one) => !isBreak(stood.get(one.rule)!, words.get(one.rule)!))
      .map((one) => `${one.rule} is ${words.get(one.rule)} at ${nearest!.text}: not broken`),
  ];
}

/** What is not so of a size at which the tolerances are too wide, and of how closely they would have to be kept. */
async function faultsOfLoose(ground: Ground, rule: string, { path, nearest, closer }: NoRemedy) {
  const { build, rules } = ground;
  const judge = rules.filter(({ id }) => id === rule);
  const there = nearest === undefined ? build : withChange(build, nearest);
  const exact = await evaluate(there, { rules: judge });
  const { verdict, nominally } = exact.verdicts[0]!;
  const faults = nominally && verdict !== "holds" ? [] : [`${rule} is ${verdict} at ${nearest?.text}`];
  if (closer?.share !== undefined) {
    const word = (await wordsOf(narrowed(there, closer.share), judge)).get(rule);
    if (word !== "holds") faults.push(`${rule} is ${word} with all tolerances at ${closer.share}`);
  }
  const text = nearest?.text;
  if (closer?.own !== undefined && text?.includes("±")) {
    const kept = withField(there, path, text.replace(/±.*/, closer.own));
    const word = (await wordsOf(kept, judge)).get(rule);
    if (word !== "holds") faults.push(`${rule} is ${word} at ${text} kept to ${closer.own}`);
  }
  return faults;
}

/** A size that is said not to do and does: the finding holds, and nothing is broken. Both ways, over the whole range. */
async function sizeThatDoes(ground: Ground, rule: string, { path }: NoRemedy): Promise<string | undefined> {
  const { build, before, rules, sizes } = ground;
  const judge = rules.filter(({ id }) => id === rule);
  const { up, down } = changesOf(path);
  for (const way of [
    ...(up === undefined ? [] : [1 as const]),
    ...(down === undefined ? [] : [-1 as const]),
  ]) {
    const ladder = new Ladder(withDefaults(build), path, way);
    const near = spread(1, Math.min(ladder.count, sizes), sizes / 2);
    let looked = 0;
    for (const rung of new Set([...near, ...spread(1, ladder.count, sizes)])) {
      const there = onRung(build, ladder, rung);
      if ((await wordsOf(there, judge)).get(rule) !== "holds" || looked === LOOKED) continue;
      looked += 1;
      if (brokenIn(before, await evaluate(there, { rules })).length === 0)
        return ladder.textAt(rung) ?? `${rung}`;
    }
  }
  return undefined;
}

/** What is not so of why a dimension is no remedy; empty where all is. */
export async function faultsOfNoRemedy(
  ground: Ground,
  rule: string,
  other: NoRemedy,
): Promise<readonly string[]> {
  const does = await sizeThatDoes(ground, rule, other);
  return [
    ...(other.why === "breaks" ? await faultsOfNearest(ground, rule, other) : []),
    ...(other.why === "too-loose" ? await faultsOfLoose(ground, rule, other) : []),
    ...(does === undefined ? [] : [`${other.path} at ${does} does`]),
  ];
}
