import { readFileSync } from "node:fs";
import {
  describeFindingRemedies,
  describeSolution,
  evaluate,
  findRemedies,
  readBuildText,
  solve,
  withField,
} from "trialfit";
import { describe, expect, it } from "vitest";
import type { RemedyView, SolutionView } from "../choosingProtocol.ts";
import type { FromDesk, ToDesk } from "../deskProtocol.ts";
import type { FromWorker } from "../protocol.ts";
import { Bench } from "./Bench.ts";
import { Desk } from "./Desk.ts";
import { withLinks } from "./ruleTitles.ts";

const TEXT = `trialfit: "1"
name: Two (invented)
use: street
block: { layout: inline, cylinders: "2", bore: 86.500 mm ± 0.010, deckHeight: 8.8605 in }
crankshaft: { stroke: 94 mm ± 0.02 }
connectingRod: { length: "? 138 mm to 148 mm in steps of 0.5 mm" }
piston: { compressionHeight: "? 1.02 in to 1.42 in in steps of 0.001 in" }
headGasket: { compressedThickness: 1.0 mm ± 0.05 }
aims: { deckClearance: 0.1 mm ± 0.02 }
`;
const ground = { text: TEXT, file: "build.yaml" };
/** A piston that may come up too far above the deck, and a speed that is too high. */
const given = `trialfit: "1"
name: Four (invented)
use: street
block: { layout: inline, cylinders: "4", mainBearings: "5", bore: 86 mm ± 0.01, deckHeight: 225 mm ± 0.05 }
crankshaft: { stroke: 92 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 35.2 mm ± 0.03, crownVolume: 3 cm3 dish ± 0.3 }
headGasket: { compressedThickness: 1.0 mm ± 0.05 }
targets: { speed: 7600 rpm }
`;
const larkspur = readFileSync(
  new URL("../../../../packages/core/demo/larkspur-hill.yaml", import.meta.url),
  "utf8",
);

/** Everything that a desk answers to some messages. */
async function answers(...messages: readonly ToDesk[]): Promise<readonly FromDesk[]> {
  const told: FromDesk[] = [];
  const desk = new Desk((message) => told.push(message));
  await Promise.all(messages.map((message) => desk.take(message)));
  return told;
}

async function found(text: string): Promise<SolutionView> {
  const told = await answers({ kind: "find", errand: 1, ground: { text, file: "build.yaml" } });
  const last = told.at(-1)!;
  expect(last).toMatchObject({ kind: "found" });
  return (last as Extract<FromDesk, { kind: "found" }>).view;
}

async function mended(text: string, rule: string): Promise<RemedyView> {
  const told = await answers({ kind: "mend", errand: 1, ground: { text, file: "build.yaml" }, rule });
  expect(told.at(-1)).toMatchObject({ kind: "mended" });
  return (told.at(-1) as Extract<FromDesk, { kind: "mended" }>).view;
}

describe("sizes found at the desk", () => {
  it("are those that `solve` finds, in the units and words of the command", async () => {
    const solution = await solve(readBuildText(TEXT, "build.yaml"));
    if (solution.state !== "solved") throw new Error(solution.state);
    const said = describeSolution(solution);
    const view = await found(TEXT);
    expect(view.found).toEqual(solution.fields.map(({ path, label, text }) => ({ path, label, text })));
    expect(view.found.map(({ text }) => text)).toEqual([
      expect.stringMatching(/ mm$/),
      expect.stringMatching(/ in$/),
    ]);
    const section = (heading: string) => said.sections.find((one) => one.heading === heading)!;
    expect(view.lead[0]!.text).toBe(said.lead[0]!.text);
    for (const part of [view.sizes!, view.aims!])
      expect(part.items.map(({ title, lines }) => [title, lines.map(({ text }) => text)])).toEqual(
        section(part.heading).items.map(({ title, lines }) => [title, lines.map(({ text }) => text)]),
      );
    expect(view.family!.intro).toBe(section("Other solutions").intro);
    expect(view.family!.members.map((sizes) => sizes.map(({ text }) => text))).toEqual(
      solution.family!.members.map((sizes) => sizes.map(({ text }) => text)),
    );
    expect(view.family!.picture).toMatch(/^<div[^>]*><svg[\s\S]*Connecting rod: rod length/);
    const words = new Map(solution.report.verdicts.map(({ rule, verdict }) => [rule, verdict]));
    const { fails, open } = solution.report.summary;
    expect(view.standing!.findings.map(({ id, word }) => [id, word])).toEqual(
      view.standing!.findings.map(({ id }) => [id, words.get(id!)]),
    );
    expect(view.standing!.findings).toHaveLength(fails + open);
    expect(view.standing!.lead[1]!.text).toContain(`${fails} fail`);
  }, 120_000);

  it("names the aims that pull against each other, and what is missing", async () => {
    const against = TEXT.replace(
      "deckClearance: 0.1 mm ± 0.02",
      "deckClearance: 0.1 mm ± 0.02, squishGap: 3 mm",
    );
    const view = await found(against);
    expect(view.state).toBe("conflict");
    expect(view.lead.map(({ text }) => text).join(" ")).toMatch(
      /cannot be met together: Deck clearance, Squish gap/,
    );
    expect([view.found, view.sizes?.items.length, view.aims?.items.length]).toEqual([[], 2, 2]);
    const bare = await found(TEXT.replace(", deckHeight: 8.8605 in", ""));
    expect([bare.state, bare.lead[0]!.text]).toEqual([
      "missing",
      expect.stringMatching(/^Not solved: the aims also need Block: /),
    ]);
  }, 120_000);

  it("ends what something newer came after or what was left, and says what is wrong", async () => {
    const told = await answers(
      { kind: "find", errand: 1, ground },
      { kind: "find", errand: 2, ground },
      { kind: "mend", errand: 3, ground, rule: "rod-ratio-usual" },
      { kind: "leave", errand: 4, of: "mend" },
    );
    expect(new Set(told.map(({ errand }) => errand)).has(3)).toBe(false);
    expect(told.filter(({ kind }) => kind === "found").map(({ errand }) => errand)).toEqual([2]);
    expect(
      told.filter(({ errand }) => errand === 2).map((one) => ("phase" in one ? one.phase : one.kind)),
    ).toEqual(["sizes", "rules", "found"]);
    const [wrong] = (
      await answers({ kind: "find", errand: 1, ground: { text: given, file: "build.yaml" } })
    ).slice(-1);
    expect(wrong).toMatchObject({
      kind: "failed",
      message: expect.stringContaining("at least one dimension"),
    });
  }, 120_000);
});

describe("changes found at the desk", () => {
  it("are those that `findRemedies` finds, in the words of the command, and the finding holds with each", async () => {
    const build = readBuildText(given, "build.yaml");
    for (const rule of ["stack-fits-deck", "mean-piston-speed"]) {
      const [finding] = (await findRemedies(build, { only: [rule] })).findings;
      const view = await mended(given, rule);
      expect(view.state).toBe("achievable");
      expect(view.remedies.map(({ path, text }) => [path, text])).toEqual(
        finding!.remedies.map(({ path, text }) => [path, text]),
      );
      const printed = describeFindingRemedies(finding!).lines.map(({ text }) => withLinks(text));
      for (const { text } of [view.head, ...view.measure, ...view.not]) expect(printed).toContain(text);
      for (const { label, path, text, by, beside, was } of view.remedies) {
        const line = printed.find((one) => one.startsWith(`${label} [${path}]: ${text}, ${by}`))!;
        for (const words of beside) expect(line).toContain(words);
        const [part, name] = path.split(".") as [string, string];
        expect(given).toMatch(new RegExp(`${part}: {.*\\b${name}: ${was}`));
        const { verdicts } = await evaluate(withField(build, path, text));
        expect(verdicts.find((one) => one.rule === rule)!.verdict).toBe("holds");
      }
    }
  }, 240_000);

  it("tell how far they are", async () => {
    const told = await answers({
      kind: "mend",
      errand: 1,
      ground: { text: given, file: "build.yaml" },
      rule: "stack-fits-deck",
    });
    const shares = told.flatMap((one) => (one.kind === "mending" ? [one.progress.dimensions] : []));
    const { of } = shares[1]!;
    expect(shares).toEqual([undefined, ...Array.from({ length: of }, (_, tried) => ({ tried, of }))]);
  }, 120_000);

  it("say it where nothing does, and where there is nothing to change", async () => {
    const none = await mended(larkspur, "journal-overlap");
    expect([none.state, none.remedies]).toEqual(["unachievable", []]);
    expect(none.head.text).toMatch(/^unachievable by one dimension alone: /);
    expect(none.not.some(({ text }) => text.includes("would do, but then"))).toBe(true);
    const fine = await mended(given, "rod-ratio-usual");
    expect([fine.state, fine.head]).toEqual([
      undefined,
      { label: "holds", text: "nothing to change", tone: "good" },
    ]);
  }, 240_000);
});

describe("what is put into the build", () => {
  it("is one change, in the form as if it was typed, and no longer measured", async () => {
    const told: FromWorker[] = [];
    const bench = new Bench((message) => told.push(message));
    const measured = TEXT.replace(
      "deckHeight: 8.8605 in",
      "deckHeight: { value: 225.05 mm, provenance: measured, instrument: dial depth gauge, note: decked once }",
    );
    await bench.take({ kind: "open", revision: 1, text: measured, file: "build.yaml" });
    const sizes = [
      { path: "connectingRod.length", text: "144.5 mm" },
      { path: "piston.compressionHeight", text: "1.32 in" },
      { path: "block.deckHeight", text: "225.10 mm ± 0.05" },
      { path: "targets.speed", text: "6500 rpm" },
    ];
    await bench.take({ kind: "put", revision: 2, sizes });
    const texts = told.filter((one) => one.kind === "text");
    expect(texts.map(({ revision }) => revision)).toEqual([1, 2]);
    const { text, entries, troubles } = texts[1]!;
    expect(troubles).toEqual([]);
    expect(text).toMatch(/length: 144\.5 mm[\s\S]*compressionHeight: 1\.32 in[\s\S]*speed: 6500 rpm/);
    expect(entries["connectingRod.length"]).toMatchObject({ form: "pieces", number: "144.5", unit: "mm" });
    expect(entries["block.deckHeight"]).toMatchObject({ number: "225.10", tolerance: "0.05" });
    expect(entries["block.deckHeight"]).toHaveProperty("about", { note: "decked once" });
    expect(text).not.toMatch(/measured|gauge/);
    expect(told.at(-1)).toMatchObject({ revision: 2 });
  }, 120_000);
});
