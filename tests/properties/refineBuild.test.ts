import { isDeepStrictEqual } from "node:util";
import { evaluate, type Refinement, type Report, refineBuild } from "trialfit";
import { describe, expect, it } from "vitest";
import { demoBuilds, generateBuild } from "../catalog/generateBuilds.ts";

const SEED = 4242;
/** Drawn builds that do not take long. */
const drawn = [1, 4].map((number) => generateBuild(SEED, number));
const builds = [...demoBuilds, ...drawn];

async function all(steps: AsyncGenerator<Refinement>): Promise<readonly Refinement[]> {
  const refinements: Refinement[] = [];
  for await (const one of steps) refinements.push(one);
  return refinements;
}

/** A verdict without what may come later than it. */
const bare = (report: Report) => report.verdicts.map(({ settlement: _, ...verdict }) => verdict);

/** Each as one text, to compare many of them quickly. */
const textsBy = <T>(all: readonly T[], key: (one: T) => string) =>
  new Map(all.map((one) => [key(one), JSON.stringify(one)]));

const differing = (some: ReadonlyMap<string, string>, all: ReadonlyMap<string, string>) =>
  [...some].filter(([key, text]) => all.get(key) !== text).map(([key]) => key);

describe("refining a build", () => {
  it("ends with what evaluate gives, and never says before what it does not say then", async () => {
    let [early, pendingSeen] = [0, 0];
    for (const build of builds) {
      const refinements = await all(refineBuild(build));
      const last = refinements.at(-1)!;
      expect(last.pending).toEqual([]);
      expect(isDeepStrictEqual(last.report, await evaluate(build))).toBe(true);
      const final = textsBy(bare(last.report), ({ rule }) => rule);
      const quantities = textsBy(last.report.quantities, ({ id }) => id);
      for (const { report, pending } of refinements.slice(0, -1)) {
        early += 1;
        pendingSeen += pending.length;
        expect(report.summary.sound).toBe(report.pending!.rules.length === 0 && last.report.summary.sound);
        const said = textsBy(bare(report), ({ rule }) => rule);
        expect(differing(said, final)).toEqual([]);
        expect(
          differing(
            textsBy(report.quantities, ({ id }) => id),
            quantities,
          ),
        ).toEqual([]);
        const { rules, settlements } = report.pending!;
        const waiting = rules.map(({ rule }) => rule);
        expect([...said.keys(), ...waiting].sort()).toEqual([...final.keys()].sort());
        expect(pending).toEqual([...waiting, ...settlements]);
        expect(settlements.filter((rule) => !final.get(rule)?.includes('"verdict":"open"'))).toEqual([]);
      }
    }
    expect(early).toBeGreaterThan(builds.length);
    expect(pendingSeen).toBeGreaterThan(0);
  });

  it("says at once what is remembered", async () => {
    for (const build of demoBuilds) {
      await evaluate(build);
      const refinements = await all(refineBuild(build));
      const [first, last] = [refinements[0], refinements.at(-1)];
      // What cannot be worked out is said anew each time; all else is there.
      const states = new Map(last!.report.quantities.map(({ id, state }) => [id, state]));
      const awaited = (first!.report.pending?.rules ?? []).flatMap(({ awaits }) => awaits);
      expect(awaited.filter((id) => states.get(id) !== "impossible")).toEqual([]);
      expect(first!.report.verdicts.length).toBeGreaterThan(300);
    }
  });

  it("can be left, and what was derived by then is kept", async () => {
    const build = generateBuild(SEED, 9);
    const stop = new AbortController();
    const begun = refineBuild(build, { signal: stop.signal });
    const first = (await begun.next()).value as Refinement;
    expect(first.pending.length).toBeGreaterThan(0);
    stop.abort(new Error("a newer build"));
    await expect(begun.next()).rejects.toThrow("a newer build");
    const refinements = await all(refineBuild(build));
    expect(refinements[0]!.pending.length).toBeLessThanOrEqual(first.pending.length);
    expect(refinements.at(-1)!.report).toStrictEqual(await evaluate(build));
  });

  it("passes on what evaluate takes, and refuses what it refuses", async () => {
    const [build] = demoBuilds;
    const options = { stage: "trial-assembly", sets: ["street"], statistics: { draws: 3, seed: 1 } } as const;
    const refinements = await all(refineBuild(build, options));
    expect(refinements.at(-1)!.report).toStrictEqual(await evaluate(build, options));
    await expect(refineBuild({}).next()).rejects.toThrow("trialfit");
    const wrong = { statistics: { draws: 0, seed: 1 } };
    await expect(refineBuild(build, wrong).next()).rejects.toThrow(RangeError);
  });
});
