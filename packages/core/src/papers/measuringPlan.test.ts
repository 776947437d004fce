import { describe, expect, it } from "vitest";
import { evaluate } from "../evaluate.ts";
import { readBuildText } from "../read/readBuild.ts";
import { limitsOf } from "./limitsOf.ts";
import { makePaperSource } from "./makePaperSource.ts";
import { measuringPlan } from "./measuringPlan.ts";
import { takeRows } from "./takeIn/takeRows.ts";
import { writePapers } from "./writePapers.ts";

const TEXT = `trialfit: "1"
name: Two (invented)
use: street
block: { layout: inline, cylinders: "2", bore: 86.500 mm ± 0.010, deckHeight: 220 mm ± 0.05 }
crankshaft: { stroke: 90 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 30.5 mm ± 0.03, crownVolume: 1.5 cm3 dome ± 0.3 }
`;

describe("a measuring plan", () => {
  it("is the measurement sheet: the same rows in the same order, and the same limits", async () => {
    const build = readBuildText(TEXT, "two.yaml");
    const report = await evaluate(build);
    for (const units of ["written", "inch"] as const) {
      const plan = measuringPlan(TEXT, build, report, { units });
      const { sheet } = await writePapers(build, { date: "2026-03-14", only: ["trial-sheet"], units });
      const rows = plan.flatMap(({ places }) => places.map(({ row }) => row));
      expect(rows.length).toBeGreaterThan(20);
      const source = await makePaperSource(build, { units });
      const limited = [];
      for (const { path, places } of plan) {
        const { lowest, highest } = (await limitsOf(source, path))!;
        limited.push(...places.map(({ row }) => ({ ...row, lowest, highest })));
      }
      expect(limited).toEqual(sheet);
      expect(sheet.some(({ lowest, highest }) => lowest !== "" || highest !== "")).toBe(true);
      expect(plan.filter(({ rules }) => rules.length > 0).length).toBeGreaterThan(3);
    }
  }, 300_000);

  it("shows what was measured, in its place", async () => {
    const build = readBuildText(TEXT, "two.yaml");
    const plan = measuringPlan(TEXT, build, await evaluate(build));
    const bore = plan.find(({ path }) => path === "block.bore")!;
    expect(bore.places.map(({ place }) => place)).toContain("cylinder 2, top, across");
    expect(bore.places.some(({ reading }) => reading !== undefined)).toBe(false);
    const at = bore.places.find(({ place }) => place === "cylinder 2, top, across")!;
    const filled = { line: 1, row: { ...at.row, reading: "86.504", by: "A. N." } };
    const { text, refused, build: measured } = takeRows(TEXT, "two.yaml", [filled], "the form");
    expect(refused).toEqual([]);
    const after = measuringPlan(text, measured, await evaluate(measured));
    const readings = after.flatMap(({ places }) =>
      places.filter(({ reading }) => reading !== undefined).map(({ place, reading }) => [place, reading]),
    );
    expect(readings).toEqual([["cylinder 2, top, across", "86.504 mm"]]);
    const predictions = after
      .find(({ path }) => path === "block.bore")!
      .places.map(({ row }) => row.predicted);
    expect(new Set(predictions)).toEqual(new Set(["86.500"]));
  }, 120_000);

  it("has no limits for what is not on the sheet", async () => {
    const source = await makePaperSource(readBuildText(TEXT, "two.yaml"), {});
    expect(await limitsOf(source, "targets.speed")).toBeUndefined();
  }, 120_000);
});

describe("papers in pieces", () => {
  it("tell how far they are, and end when something newer is asked for", async () => {
    const build = readBuildText(TEXT, "two.yaml");
    const told: string[] = [];
    const stop = new AbortController();
    const options = { date: "2026-03-14", only: ["work-order", "trial-sheet"] };
    await writePapers(build, {
      ...options,
      told: ({ rooms }) => told.push(rooms === undefined ? "judging" : `${rooms.found} of ${rooms.of}`),
    });
    const [first, ...rooms] = told;
    expect(first).toBe("judging");
    expect(rooms.length).toBeGreaterThan(5);
    expect(rooms).toEqual(rooms.map((_, found) => `${found} of ${rooms.length}`));
    const newer = new Error("a newer request");
    const begun = writePapers(build, { ...options, signal: stop.signal });
    stop.abort(newer);
    await expect(begun).rejects.toBe(newer);
  }, 300_000);
});
