import { readFileSync } from "node:fs";
import { compareBuilds, evaluate, printBand, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { prettyUnits } from "../../data/prettyUnits.ts";
import type { PairView } from "../pairProtocol.ts";
import type { FromWorker } from "../protocol.ts";
import { Bench } from "./Bench.ts";
import { PairViewer } from "./PairViewer.tsx";

const demo = (name: string) =>
  readFileSync(new URL(`../../../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const small = `trialfit: "1"
name: Small
use: street
targets: { speed: 7000 rpm }
block: { layout: inline, cylinders: "4", bore: 86 mm ± 0.01, deckHeight: 225 mm ± 0.05 }
crankshaft: { stroke: 92 mm }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 34.9 mm ± 0.03 }
headGasket: { compressedThickness: 1.0 mm ± 0.05 }
`;
const stroked = small.replace("stroke: 92 mm", "stroke: 94 mm ± 0.02").replace("Small", "Stroked");

/** What the bench tells of messages that come one after the other. */
async function run(...messages: readonly Record<string, unknown>[]) {
  const told: FromWorker[] = [];
  const bench = new Bench((message) => told.push(structuredClone(message)));
  for (const [index, message] of messages.entries())
    await bench.take({ revision: index + 1, ...message } as Parameters<Bench["take"]>[0]);
  return told;
}
const open = (text: string) => ({ kind: "open", text, file: "build.yaml" });
const hold = (text: string | undefined) => ({ kind: "hold", text });
const pairsIn = (told: readonly FromWorker[]) =>
  told.flatMap((one) => (one.kind === "pair" ? [{ revision: one.revision, view: one.view }] : []));

function compared(view: PairView | undefined): Extract<PairView, { state: "compared" }> {
  if (view?.state !== "compared") throw new Error(`it is ${view?.state}`);
  return view;
}

describe("two builds side by side", () => {
  it("says of each what the evaluator says, and of their verdicts where they differ", async () => {
    const view = compared(pairsIn(await run(open(stroked), hold(small))).at(-1)?.view);
    const [bench, other] = await Promise.all(
      [stroked, small].map(async (text) => evaluate(readBuildText(text))),
    );
    for (const [at, report] of [bench!, other!].entries()) {
      const { holds, fails, open: open_, unknown, toConfirm, sound } = report.summary;
      expect(view.sides[at]).toMatchObject({
        name: report.build.name,
        sound,
        counts: { holds, fails, open: open_, unknown, toConfirm, pending: 0 },
      });
    }
    const wordOf = (report: typeof bench) =>
      new Map(report!.verdicts.map(({ rule, verdict }) => [rule, verdict]));
    const [here, there] = [wordOf(bench), wordOf(other)];
    const differing = [...here].filter(([rule, word]) => there.get(rule) !== word).map(([rule]) => rule);
    expect(view.verdicts.map(({ rule }) => rule).sort()).toEqual(differing.sort());
    expect(differing.length).toBeGreaterThan(0);
    for (const { rule, words, causes } of view.verdicts) {
      expect(words).toEqual([here.get(rule), there.get(rule)]);
      expect(causes.map(({ path }) => path)).toContain("crankshaft.stroke");
    }
    const deck = view.verdicts.find(({ rule }) => rule === "stack-fits-deck");
    expect(deck?.glances[0]).toMatch(/Deck clearance.*mm/);
    expect(deck?.glances[0]).not.toBe(deck?.glances[1]);
  });
  it("shows the size of each with its tolerance, and how far it is from the other", async () => {
    const { sizes } = compared(pairsIn(await run(open(stroked), hold(small))).at(-1)?.view);
    expect(sizes).toHaveLength(1);
    expect(sizes[0]).toMatchObject({
      path: "crankshaft.stroke",
      label: "Crankshaft: stroke",
      texts: ["94 mm ± 0.02", "92 mm"],
      by: "2 mm more",
    });
    // The other states no tolerance: what is taken for it is said.
    expect(sizes[0]!.taken[0]).toBeUndefined();
    expect(sizes[0]!.taken[1]).toMatch(/^± [\d.]+ mm taken$/);
    const gone = small.replace("stroke: 92 mm", "");
    const came = compared(pairsIn(await run(open(gone), hold(small))).at(-1)?.view).sizes;
    expect(came.find(({ path }) => path === "crankshaft.stroke")).toMatchObject({
      texts: [undefined, "92 mm"],
      by: "only in the other",
    });
  });
  it("puts the numbers that moved most first, each as both builds have it", async () => {
    const { numbers } = compared(pairsIn(await run(open(stroked), hold(small))).at(-1)?.view);
    const change = await compareBuilds(readBuildText(small), readBuildText(stroked));
    expect(numbers.length).toBeGreaterThan(5);
    const shares = numbers.map(({ id, texts, causes }) => {
      const { before, after, unit, decimals } = change.quantities.find((one) => one.id === id)!;
      if (before === undefined || after === undefined) return -1;
      expect(texts).toEqual([after, before].map((span) => prettyUnits(printBand(span, unit, decimals))));
      if (after.nominal !== before.nominal) expect(causes[0]?.path).toBe("crankshaft.stroke");
      const ends = ["low", "nominal", "high"] as const;
      const scale = Math.max(...ends.flatMap((end) => [Math.abs(before[end]), Math.abs(after[end])]));
      return Math.max(...ends.map((end) => Math.abs(after[end] - before[end]))) / scale;
    });
    expect(shares).toEqual([...shares].sort((a, b) => b - a));
    expect(numbers.find(({ id }) => id === "deckClearance")?.by).toBe("−1.000 mm");
  });
  it("follows what is typed, and stops when it is told to", async () => {
    const told = await run(
      open(small),
      hold(small),
      { kind: "write", path: "block.bore", entry: { form: "text", text: "89 mm ± 0.01", about: {} } },
      hold(undefined),
      { kind: "write", path: "block.bore", entry: { form: "text", text: "90 mm ± 0.01", about: {} } },
    );
    const pairs = pairsIn(told);
    expect(pairs.map(({ revision }) => revision)).toEqual([2, 3]);
    expect(compared(pairs[0]!.view).sizes).toEqual([]);
    expect(compared(pairs[0]!.view).verdicts).toEqual([]);
    expect(compared(pairs[1]!.view).sizes).toMatchObject([
      { texts: ["89 mm ± 0.01", "86 mm ± 0.01"], by: "3 mm more" },
    ]);
  });
  it("judges both by what is asked for, and again when that changes", async () => {
    const told = await run(open(stroked), hold(small), { kind: "judge", options: { stage: "choose" } });
    const { summary } = await evaluate(readBuildText(small), { stage: "choose" });
    expect(compared(pairsIn(told).at(-1)?.view).sides[1].counts.unknown).toBe(summary.unknown);
    expect(compared(pairsIn(told)[0]?.view).sides[1].counts.unknown).not.toBe(summary.unknown);
  });
  it("leaves out what cannot be read and says so; of a file that is none it says why", async () => {
    const slip = small.replace("86 mm ± 0.01", "860 mm");
    const view = compared(pairsIn(await run(open(small), hold(slip))).at(-1)?.view);
    expect(view.notes).toHaveLength(1);
    expect(view.notes[0]).toMatch(/Left out of the other build: .*bore/);
    expect(view.sizes).toMatchObject([{ path: "block.bore", by: "only in this build" }]);
    const none = pairsIn(await run(open(small), hold("a: ["))).at(-1)?.view;
    expect(none?.state).toBe("unread");
  });
  it("gives the first causes only where hundreds of values differ", async () => {
    const { sizes, verdicts } = compared(
      pairsIn(await run(open(demo("larkspur-hill")), hold(demo("harrow-eight")))).at(-1)?.view,
    );
    expect(sizes.length).toBeGreaterThan(200);
    expect(verdicts.length).toBeGreaterThan(20);
    for (const { causes } of verdicts) expect(causes.length).toBeLessThanOrEqual(4);
    expect(verdicts.some(({ others }) => others > 0)).toBe(true);
  });
});

describe("both mechanisms", () => {
  const scaleOf = (html: string) => /scale\((-?[\d.]+)\)/.exec(html)?.[1];
  const placeOf = (html: string) => /translate\(([^)]+)\)/.exec(html)?.[1];
  const angle = (38 / 180) * Math.PI;

  it("are drawn to one scale, with their crankshafts at one place, at one angle", () => {
    const [bench, other] = new PairViewer().draw([demo("larkspur-hill"), demo("harrow-eight")], angle);
    expect(scaleOf(bench)).toBeDefined();
    expect(scaleOf(bench)).toBe(scaleOf(other));
    expect(placeOf(bench)).toBe(placeOf(other));
    for (const html of [bench, other]) expect(html).toContain("38°");
    expect(bench).not.toBe(other);
    // Each beside itself has a scale of its own: that of the two is one of both.
    const own = [demo("larkspur-hill"), demo("harrow-eight")].map(
      (text) => new PairViewer().draw([text, text], angle)[0],
    );
    expect(Number(scaleOf(bench))).toBe(Math.min(...own.map((html) => Number(scaleOf(html)))));
  });
  it("of a file that cannot be read nothing is drawn, the other is", () => {
    const [bench, other] = new PairViewer().draw(["a: [", demo("harrow-eight")], angle);
    expect(bench).toBe("");
    expect(other).toContain("<svg");
  });
});
