import { mergeSearches, type SearchOptions, type SearchResult, search } from "trialfit";
import { describe, expect, it, vi } from "vitest";
import { ProjectedJudge } from "../../../packages/core/src/choose/search/ProjectedJudge.ts";
import { Scoring } from "../../../packages/core/src/choose/search/Scoring.ts";
import { SearchRun } from "../../../packages/core/src/choose/search/SearchRun.ts";
import { Walk } from "../../../packages/core/src/choose/search/Walk.ts";
import { quantities } from "../../../packages/core/src/derive/generated/quantities.ts";
import { compileRules } from "../../../packages/core/src/judge/compileRules.ts";
import { generator } from "../generator.ts";
import { type Aim, byIds, frontOf, scoreOf, stays, type Weights } from "./bestOf.ts";
import { type Combination, exhaust } from "./exhaust.ts";
import { demoSearch, madeUpSearch, type RandomSearch } from "./RandomSearch.ts";

/** 200 of which everything is compared, and six with readings by cylinder. */
const LISTS = 206;
/** Every so many lists are of parts of the demo build, dearer rules among them, or with readings by cylinder. */
const EVERY = { demo: 3, dear: 60, positions: 40 };

const alone = (aim: Aim): Weights => ({ cost: 0, margin: 0, mass: 0, time: 0, [aim]: 1 });
const objectives: readonly {
  readonly objective: NonNullable<SearchOptions["objective"]>;
  readonly weights: Weights;
}[] = [
  ...(["cost", "mass", "time", "margin"] as const).map((aim) => ({ objective: aim, weights: alone(aim) })),
  {
    objective: { cost: "1", mass: "30/kg", time: "7/d", margin: "250" },
    weights: { cost: 1, mass: 300_000, time: 70_000 / 86_400, margin: 2_500_000 },
  },
];
const fronts: readonly (readonly Aim[])[] = [
  ["cost", "margin"],
  ["cost", "mass", "time"],
  ["margin", "time"],
  [],
];

/** What was compared, so that nothing is taken for proven that never came up. */
class Counts {
  private readonly counts = new Map<string, number>();
  add(what: string, count = 1): void {
    this.counts.set(what, (this.counts.get(what) ?? 0) + count);
  }
  of(what: string): number {
    return this.counts.get(what) ?? 0;
  }
}

const idsOf = ({ parts }: SearchResult["best"][number]) =>
  Object.fromEntries(parts.map(({ part, id }) => [part, id]));

/** What must be the same in whatever way a search is done. */
const answerOf = ({ best, front, combinations }: SearchResult) => ({ best, front, combinations });
const sumOf = ({ reached, outranked, fellOut }: SearchResult) =>
  fellOut.reduce((sum, { fails, unsettled }) => sum + fails + unsettled, reached + outranked);

/** A search that is stopped after so many steps, again and again, and goes on from what was written down. */
function inPieces(options: SearchOptions, steps: number, counts: Counts): SearchResult {
  const rules = compileRules(options.rules!);
  const build = options.fixed as RandomSearch["fixed"];
  let from: unknown;
  for (;;) {
    const run = new SearchRun(build, rules, quantities, from === undefined ? options : { ...options, from });
    for (let step = 0; step < steps && !run.walk.done; step += 1) run.walk.step();
    const result = run.result();
    if (result.complete) return result;
    counts.add("stops");
    from = JSON.parse(JSON.stringify(result));
  }
}

async function compareOne(one: RandomSearch, all: readonly Combination[], index: number, counts: Counts) {
  const random = generator(index + 7);
  for (const [at, { objective, weights }] of objectives.entries()) {
    const drawn = random();
    const demand = drawn < 0.3 ? true : drawn < 0.5 ? ("known" as const) : false;
    const front = fronts[(index + at) % fronts.length]!;
    const options: SearchOptions = {
      fixed: one.fixed,
      candidates: one.candidates,
      rules: one.rules,
      objective,
      best: 1 + Math.floor(random() * 5),
      front,
      demand,
    };
    const result = await search(options);
    const order = result.kinds.map(({ part }) => part);
    const run = new SearchRun(one.fixed, compileRules(one.rules), quantities, options);
    const touched = new Set(
      run.judge.rules.filter((_, rule) => run.judge.kindsOf(rule).length > 0).map(({ file }) => file.id),
    );
    const left = all.filter((each) => stays(each, demand));
    const ranked = [...left].sort((a, b) => {
      const [x, y] = [scoreOf(a, weights, touched), scoreOf(b, weights, touched)];
      return x === y ? byIds(order)(a, b) : x - y;
    });
    const wanted = ranked.slice(0, options.best);
    expect(result.best.map(idsOf)).toEqual(wanted.map(({ ids }) => ids));
    for (const [place, { stops }] of result.best.entries()) {
      const words = [...wanted[place]!.words];
      expect(stops.holds).toBe(words.filter(([, word]) => word === "holds").length);
      expect(stops.open).toEqual(words.filter(([, word]) => word === "open").map(([rule]) => rule));
      counts.add("words", words.length);
      counts.add("open or unknown", stops.open.length + stops.unknown.length);
    }
    if (front.length > 0) {
      const frontIds = (list: readonly Record<string, string>[]) =>
        list.map((ids) => JSON.stringify(ids)).sort();
      const expected = frontOf(left, front, touched, order);
      const sorted = expected.map(({ ids }) =>
        Object.fromEntries(one.candidates.map(({ part }) => [part.key, ids[part.key]!])),
      );
      const found = result.front!.map((each) => {
        const ids = idsOf(each);
        return Object.fromEntries(one.candidates.map(({ part }) => [part.key, ids[part.key]!]));
      });
      expect(frontIds(found)).toEqual(frontIds(sorted));
      counts.add("front", expected.length);
    }
    expect(sumOf(result)).toBe(result.combinations);
    expect(result.combinations).toBe(all.length);
    counts.add("outranked", result.outranked);
    counts.add("best", result.best.length);
    counts.add("fell", all.length - left.length);
    if (left.length === 0) counts.add("nothing fits");

    const every = await search({ ...options, countAll: true });
    expect(answerOf(every)).toEqual(answerOf(result));
    expect(every.reached).toBe(left.length);
    counts.add("counted", every.reached);

    const of = 2 + Math.floor(random() * 5);
    const shards: SearchResult[] = [];
    for (let part = 1; part <= of; part += 1) shards.push(await search({ ...options, shard: { part, of } }));
    const merged = mergeSearches(
      shards.map((shard, part) => ({ file: `shard ${part + 1}`, data: JSON.parse(JSON.stringify(shard)) })),
    );
    expect(answerOf(merged)).toEqual(answerOf(result));
    expect(sumOf(merged)).toBe(result.combinations);
    counts.add("shards", of);

    const pieces = inPieces(options, 1 + Math.floor(random() * 6), counts);
    expect(answerOf(pieces)).toEqual(answerOf(result));
    expect(sumOf(pieces)).toBe(result.combinations);
    counts.add("searches");
  }
}

async function compareLists(numbers: Iterable<number>, counts: Counts): Promise<void> {
  for (const index of numbers) {
    const random = generator(index);
    const positions = index % EVERY.positions === 0;
    const isDemo = positions || index % EVERY.demo === 0;
    const dear = index % EVERY.dear === 0;
    const one = isDemo ? demoSearch(random, dear, positions) : madeUpSearch(random);
    const all = await exhaust(one, positions);
    counts.add("combinations", all.length);
    counts.add("aims missed", all.filter(({ aimMissed }) => aimMissed).length);
    counts.add(positions ? "with positions" : isDemo ? "of the demo" : "made up");
    // Margins of rules judged at places are those of the worst place: not worked out by hand.
    if (positions) {
      const result = await search({
        fixed: one.fixed,
        candidates: one.candidates,
        rules: one.rules,
        countAll: true,
        best: 1000,
      });
      expect(new Set(result.best.map((each) => JSON.stringify(Object.entries(idsOf(each)).sort())))).toEqual(
        new Set(
          all
            .filter((each) => stays(each, false))
            .map(({ ids }) => JSON.stringify(Object.entries(ids).sort())),
        ),
      );
    } else await compareOne(one, all, index, counts);
  }
}

describe("search over parts lists", () => {
  it(`gives what evaluating every combination gives, on ${LISTS} random lists`, {
    timeout: 900_000,
  }, async () => {
    const counts = new Counts();
    await compareLists(Array(LISTS).keys(), counts);
    expect(counts.of("made up")).toBeGreaterThan(120);
    expect(counts.of("of the demo")).toBeGreaterThan(50);
    expect(counts.of("with positions")).toBeGreaterThanOrEqual(4);
    expect(counts.of("searches")).toBe(200 * objectives.length);
    for (const what of ["best", "front", "fell", "outranked", "counted", "stops", "shards", "words"])
      expect(counts.of(what), what).toBeGreaterThan(500);
    expect(counts.of("open or unknown")).toBeGreaterThan(500);
    expect(counts.of("aims missed")).toBeGreaterThan(20);
    expect(counts.of("nothing fits")).toBeGreaterThan(10);
  });

  const spoiled = async (spoil: () => { mockRestore: () => void }) => {
    const spy = spoil();
    try {
      await compareLists(Array(40).keys(), new Counts());
      return "not noticed";
    } catch (error) {
      return (error as Error).name;
    } finally {
      spy.mockRestore();
    }
  };

  it("is seen to differ when a verdict is read wrongly", async () => {
    const { ask } = ProjectedJudge.prototype;
    let asked = 0;
    const wrong = () =>
      vi.spyOn(ProjectedJudge.prototype, "ask").mockImplementation(function (this: ProjectedJudge, ...args) {
        const outcome = ask.apply(this, args);
        asked += 1;
        return asked % 50 === 0 ? { ...outcome, word: "fails" } : outcome;
      });
    expect(await spoiled(wrong)).toBe("AssertionError");
    expect(asked).toBeGreaterThan(50);
  });

  it("is seen to differ when a branch is thought worse than it can be", async () => {
    const { prospect } = Scoring.prototype;
    const wrong = () =>
      vi.spyOn(Scoring.prototype, "prospect").mockImplementation(function (this: Scoring, ...args) {
        const best = prospect.apply(this, args);
        return { ...best, score: best.score + 1 };
      });
    expect(await spoiled(wrong)).toBe("AssertionError");
  });

  it("is seen to differ when a stopped search skips a choice", async () => {
    const { goTo } = Walk.prototype;
    const wrong = () =>
      vi.spyOn(Walk.prototype, "goTo").mockImplementation(function (this: Walk, place) {
        goTo.call(this, place);
        // What is tried here is passed over, and so is all that would come of it.
        const { tally, few, front } = this;
        const kept = [tally.reached, [...few.entries], [...front.entries]] as const;
        if (!this.done) this.step();
        tally.reached = kept[0];
        few.entries.splice(0, Infinity, ...kept[1]);
        front.entries = [...kept[2]];
      });
    expect(await spoiled(wrong)).toBe("AssertionError");
  });
});
