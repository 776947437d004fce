import { readFileSync } from "node:fs";
import { fieldLabel, type Report, readBuildText } from "trialfit";
import {
  renderPaperHtml,
  type SheetRow,
  sheetColumns,
  sheetText,
  takeReadings,
  type WrittenPapers,
  writePapers,
} from "trialfit/papers";
import { beforeAll, describe, expect, it } from "vitest";
import { generator } from "../differential/generator.ts";

const name = "larkspur-hill";
const text = readFileSync(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const build = readBuildText(text, name);

/** Fills the rows of a sheet as a careful person would: near the prediction, with a good instrument. */
function filled(rows: readonly SheetRow[], seed: number): readonly SheetRow[] {
  const random = generator(seed);
  return rows.map((row) => {
    const value = build.values.get(row.entry);
    const decimals = (/\.(\d+)/.exec(row.predicted)?.[1] ?? "").length;
    const step = 10 ** -decimals;
    const word =
      value?.kind === "dimension"
        ? /(dish|dome|below|above|inside|outside)[a-z ]*/.exec(value.text)?.[0]?.trim()
        : undefined;
    const reading = Math.abs(Number.parseFloat(row.predicted)) + step * Math.round(2 * (random() - 0.5));
    if (row.predicted === "" || Number.parseFloat(row.predicted) === 0) return row;
    return {
      ...row,
      reading: `${reading.toFixed(decimals)}${word === undefined ? "" : ` ${word}`}`,
      instrument: "checked against its master",
      uncertainty: (step / 2).toFixed(decimals + 1),
      "part temperature": "20.5",
      joint: "as the sheet says",
      by: `Measurer ${1 + Math.floor(2 * random())}`,
      on: "2026-03-14",
    };
  });
}

describe("papers out, readings back", () => {
  let early: WrittenPapers;
  let later: WrittenPapers;
  let before: Report;
  let after: Report;
  let sheet: readonly SheetRow[];
  let back: ReturnType<typeof takeReadings>;
  beforeAll(async () => {
    early = await writePapers(build, { date: "2026-03-14", only: ["trial-sheet", "torque-sheet"] });
    before = early.report;
    sheet = filled(early.sheet, 20_261_129);
    back = takeReadings(text, name, sheetText(sheet), "filled.csv");
    later = await writePapers(back.build, { date: "2026-03-15", only: ["torque-sheet", "engine-record"] });
    after = later.report;
  }, 900_000);

  it("takes every reading that was written", () => {
    const written = sheet.filter(({ reading }) => reading !== "").length;
    expect(back.refused).toEqual([]);
    expect(back.taken.length + back.known).toBe(written);
    expect(written).toBeGreaterThan(150);
  });

  it("settles what was open and could be settled by what was measured", () => {
    const measured = new Set(sheet.filter(({ reading }) => reading !== "").map(({ entry }) => entry));
    const settled = before.verdicts.filter(
      ({ verdict, settlement }) =>
        verdict === "open" &&
        settlement?.provided === "as-expected" &&
        settlement.measure.every(({ path }) => measured.has(path)),
    );
    const words = new Map(after.verdicts.map(({ rule, verdict }) => [rule, verdict]));
    expect(settled.length).toBeGreaterThan(5);
    for (const { rule } of settled) expect(words.get(rule), rule).not.toBe("open");
    expect(after.summary.open).toBeLessThan(before.summary.open);
  });

  it("stands in the record with who measured what", () => {
    const html = renderPaperHtml(later, "A4");
    expect(html).toMatch(
      /measured, checked against its master, by Measurer 1; Measurer 2|by Measurer 2; Measurer 1/,
    );
    expect(html).toContain("2026-03-14, at 20.5 degC, as the sheet says");
  });

  it("releases the final assembly once every place was measured", () => {
    const waits = ({ papers }: WrittenPapers) =>
      papers.find(({ id }) => id === "torque-sheet")!.gate!.waitsFor;
    expect(waits(early).length).toBeGreaterThan(5);
    expect(waits(later).length).toBeLessThan(waits(early).length);
    // What still waits was left blank, or has come to matter by the readings: nothing that was measured everywhere.
    const blank = new Set(sheet.filter(({ reading }) => reading === "").map(({ entry }) => entry));
    const measured = new Set(
      sheet.filter(({ entry }) => !blank.has(entry)).map(({ entry }) => fieldLabel(entry).toLowerCase()),
    );
    const named = (papers: WrittenPapers) =>
      waits(papers).flatMap((one) => {
        const [, part, names] = /^measure ([^:]+): (.*)$/.exec(one) ?? [];
        return (names ?? "").split(", ").map((name) => `${part}: ${name}`.toLowerCase());
      });
    expect(named(early).filter((one) => measured.has(one)).length).toBeGreaterThan(30);
    expect(named(later).filter((one) => measured.has(one))).toEqual([]);
  });

  it.each([
    ["ten times too large", (row: SheetRow) => ({ ...row, reading: String(10 * Number(row.reading)) })],
    [
      "in inches under a head of millimetres",
      (row: SheetRow) => ({ ...row, reading: (Number(row.reading) / 25.4).toFixed(5) }),
    ],
  ])("refuses a reading %s, and says what is predicted", (_, spoil) => {
    const candidates = sheet.filter(
      ({ reading, unit, entry }) => /^[\d.]+$/.test(reading) && unit === "mm" && entry !== "block.boreTaper",
    );
    const [first] = candidates;
    const { refused, taken } = takeReadings(
      text,
      name,
      sheetText(candidates.slice(0, 40).map((row) => (row === first ? spoil(row) : row))),
      "filled.csv",
    );
    expect(taken).toHaveLength(39);
    expect(refused).toHaveLength(1);
    expect(refused[0]!.expected).toMatch(/which the build predicts/);
  });

  it("is a sheet whose columns are those that are read", () => {
    expect(sheetText([]).trim()).toBe(sheetColumns.join(","));
  });
});
