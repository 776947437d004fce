import { readBuildText } from "trialfit";
import { renderPaperHtml, renderPaperMarkdown, sheetText, writePapers, writeRecord } from "trialfit/papers";
import { describe, expect, it } from "vitest";
import type { FromDesk, PaperOrder, ToDesk, WrittenSet } from "../deskProtocol.ts";
import { Desk } from "./Desk.ts";

const TEXT = `trialfit: "1"
name: Two (invented)
use: street
block: { layout: inline, cylinders: "2", bore: 86.500 mm ± 0.010, deckHeight: 220 mm ± 0.05 }
crankshaft: { stroke: 90 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 30.5 mm ± 0.03 }
`;
const order: PaperOrder = {
  only: ["order-list", "trial-sheet", "assembly-sequence", "engine-record", "change-record"],
  units: "both",
  size: "Letter",
  revision: " B ",
  date: "2026-03-14",
  passed: {},
};
const before = TEXT.replace("90 mm", "88 mm");

/** Everything that a desk answers to some messages. */
async function answers(...messages: readonly ToDesk[]): Promise<readonly FromDesk[]> {
  const told: FromDesk[] = [];
  const desk = new Desk((message) => told.push(message));
  await Promise.all(messages.map((message) => desk.take(message)));
  return told;
}

async function written(part: Partial<PaperOrder>): Promise<WrittenSet> {
  const ground = { text: TEXT, file: "build.yaml", before };
  const told = await answers({ kind: "write", errand: 1, ground, order: { ...order, ...part } });
  const last = told.at(-1)!;
  expect(last.kind).toBe("written");
  return (last as Extract<FromDesk, { kind: "written" }>).written;
}

describe("the desk", () => {
  it("writes the documents that the command writes", async () => {
    const set = await written({});
    const papers = await writePapers(readBuildText(TEXT, "build.yaml"), {
      only: order.only,
      units: "both",
      revision: "B",
      date: "2026-03-14",
      before: readBuildText(before, "before.yaml"),
    });
    expect(papers.papers.map(({ id }) => id)).toEqual(order.only);
    expect(set.html).toBe(renderPaperHtml(papers, "Letter"));
    expect(set.papers.map(({ id, markdown }) => [id, markdown])).toEqual(
      papers.papers.map((paper) => [paper.id, renderPaperMarkdown(paper, papers.head)]),
    );
    for (const [index, { html }] of set.papers.entries())
      expect(html).toBe(renderPaperHtml({ ...papers, papers: [papers.papers[index]!] }, "Letter"));
    expect(set.sheet).toBe(sheetText(papers.sheet));
    expect(set.record).toBe(writeRecord(papers, TEXT));
  }, 120_000);

  it("says what a paper or a line waits for, and lets it pass with a name and a reason", async () => {
    const held = await written({ only: ["order-list", "assembly-sequence"] });
    const [list, sequence] = held.papers;
    const line = list!.lines!.find(({ gate }) => gate.waitsFor.length > 0)!;
    expect(line.pass).toMatch(/^order-list \w+$/);
    expect(sequence!.gate!.waitsFor.length).toBeGreaterThan(0);
    expect(held.html).toContain("HELD: not to be used yet.");
    const why = { by: "J. B.", because: "to see it" };
    const passed = { "assembly-sequence": why, [line.pass]: why };
    const free = await written({ only: ["order-list", "assembly-sequence"], passed });
    expect(free.html).not.toContain("HELD: not to be used yet.");
    expect(free.html).toContain("Let pass by J. B.");
    expect(free.html).toContain("RELEASED BY J. B.: to see it");
    expect(free.papers[0]!.lines!.find(({ pass }) => pass === line.pass)!.gate.override).toEqual(why);
    const nobody = await answers({
      kind: "write",
      errand: 1,
      ground: { text: TEXT, file: "build.yaml" },
      order: { ...order, passed: { "assembly-sequence": { by: " ", because: "x" } } },
    });
    expect(nobody.at(-1)).toMatchObject({
      kind: "failed",
      message: expect.stringContaining("without a name"),
    });
  }, 120_000);

  it("tells how far it is, and leaves what something newer was asked for after", async () => {
    const ground = { text: TEXT, file: "build.yaml" };
    const told = await answers(
      { kind: "write", errand: 1, ground, order },
      { kind: "write", errand: 2, ground, order: { ...order, only: ["trial-sheet"] } },
      { kind: "limits", errand: 3, ground, path: "block.bore", units: "written" },
      { kind: "limits", errand: 4, ground, path: "piston.compressionHeight", units: "inch" },
    );
    const ends = told.filter(({ kind }) => kind !== "progress").map(({ kind, errand }) => [kind, errand]);
    expect(ends.sort()).toEqual([
      ["limits", 4],
      ["written", 2],
    ]);
    const rooms = told.flatMap((one) => (one.kind === "progress" ? [one.progress.rooms] : []));
    expect(rooms.filter((one) => one !== undefined).length).toBeGreaterThan(3);
    const found = told.find((one) => one.kind === "limits");
    expect(found).toMatchObject({
      path: "piston.compressionHeight",
      limits: { highestBy: expect.any(String) },
    });
  }, 120_000);

  it("names what is wrong with a file that cannot be read", async () => {
    const ground = { text: `${TEXT}oops: 1\n`, file: "build.yaml" };
    const told = await answers({ kind: "write", errand: 1, ground, order });
    expect(told.at(-1)).toMatchObject({
      kind: "failed",
      message: expect.stringMatching(/build\.yaml:8:.*oops/),
    });
  });
});
