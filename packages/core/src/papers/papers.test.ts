import { readFileSync } from "node:fs";
import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { beforeAll, describe, expect, it } from "vitest";
import { readBuildText } from "../read/readBuild.ts";
import type { ReportField, ReportQuantity } from "../report/Report.ts";
import { toSi } from "../units/convert.ts";
import { findUnit } from "../units/findUnit.ts";
import { rationalFromDecimal } from "../units/Rational.ts";
import type { Paper, Piece } from "./Paper.ts";
import { paperIds } from "./paperKinds.ts";
import { renderPaperHtml } from "./print/renderPaperHtml.ts";
import { renderPaperMarkdown } from "./print/renderPaperMarkdown.ts";
import { type WrittenPapers, writePapers } from "./writePapers.ts";

const pass = new Map(
  ["torque-sheet", "assembly-sequence"].map((id) => [id, { by: "J. B.", because: "to see it" }]),
);
const demo = (name: string) =>
  readBuildText(readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8"), name);

/** Every number that stands in a document, with what it says it is. */
function numbersOf(html: string) {
  return [...html.matchAll(/<data value="([^"]*)" data-of="([^"]*)">([^<]*)<\/data>/g)].map(
    ([, value, of, text]) => ({ value: Number(value), of: of!, text: text!.replaceAll("&quot;", '"') }),
  );
}

/** A printed number as SI, with half of its last step. */
function printed(text: string) {
  const [, number, unit] = /^(-?[\d.]+(?:e-?\d+)?) ?([^±(]*?)$/.exec(text.trim()) ?? [];
  const found = unit === undefined ? undefined : findUnit(unit === "" ? "1" : unit);
  if (number === undefined || found === undefined) return undefined;
  const decimals = number.split(".")[1]?.length ?? 0;
  const si = (digits: string) => toSi(rationalFromDecimal(digits)!, found);
  return { si: si(number), step: Math.abs(si((0.5 * 10 ** -decimals).toFixed(decimals + 1)) - si("0")) };
}

const ends = ({ low, nominal, high }: ReportField | ReportQuantity) =>
  [low, nominal, high].filter((one) => one !== undefined);

describe.each(["harrow-eight", "larkspur-hill"])("papers of %s", (name) => {
  let written: WrittenPapers;
  let html: string;
  beforeAll(async () => {
    written = await writePapers(demo(name), { date: "2026-03-14", revision: "B", overrides: pass });
    html = renderPaperHtml(written, "A4");
  }, 600_000);

  it("are there, all but the record of a change", () => {
    expect(written.papers.map(({ id }) => id)).toEqual(paperIds.filter((id) => id !== "change-record"));
  });

  it("carry the numbers of the report, and no other", () => {
    const { report } = written;
    const fields = new Map(report.fields.map((one) => [one.path, one]));
    const quantities = new Map(report.quantities.map((one) => [one.id, one]));
    const limits = new Map<string, number>(
      report.verdicts.flatMap(({ rule, comparisons }) =>
        comparisons.flatMap(({ againstName, against }) =>
          typeof against === "object" && "nominal" in against
            ? [[`${rule} ${againstName ?? "limit"}`, against.nominal] as const]
            : [],
        ),
      ),
    );
    const counts = { fields: 0, quantities: 0, limits: 0, others: 0 };
    for (const { value, of } of numbersOf(html)) {
      const field = fields.get(of);
      const quantity = quantities.get(of);
      if (field !== undefined) {
        counts.fields += 1;
        const [low = 0, nominal = 0, high = 0] = ends(field);
        const told = [low, nominal, high, high - nominal, nominal - low];
        expect(told.some((one) => Math.abs(one - value) <= 1e-12 * Math.abs(value))).toBe(true);
      } else if (quantity !== undefined) {
        counts.quantities += 1;
        expect(ends(quantity)).toContain(value);
      } else if (limits.has(of)) {
        counts.limits += 1;
        expect(value).toBe(limits.get(of));
      } else {
        counts.others += 1;
        expect(of).toMatch(/^(room|uncertainty) |×/);
      }
    }
    expect(counts.fields).toBeGreaterThan(600);
    expect(counts.quantities).toBeGreaterThan(300);
    expect(counts.limits).toBeGreaterThan(150);
    expect(counts.others).toBeGreaterThan(20);
  });

  it("print every number so that it reads back as what it is", () => {
    let read = 0;
    for (const { value, text, of } of numbersOf(html)) {
      const one = printed(text.split(" / ")[0]!);
      if (one === undefined || of.startsWith("uncertainty") || of.includes("×")) continue;
      const isDifference = text !== "" && !Number.isFinite(value);
      if (isDifference) continue;
      // A difference of temperatures is printed without the zero mark of the scale.
      const off = Math.min(Math.abs(one.si - value), Math.abs(one.si - 273.15 - value));
      const fourFigures = 6e-4 * Math.abs(value);
      expect(off, `${of}: ${text}`).toBeLessThanOrEqual(Math.max(one.step * 1.01, fourFigures));
      read += 1;
    }
    expect(read).toBeGreaterThan(1000);
  });

  it("have no empty table, step or heading", () => {
    let counted = 0;
    for (const { sections, title, purpose } of written.papers) {
      expect(title.length * purpose.length).toBeGreaterThan(0);
      expect(sections.length).toBeGreaterThan(0);
      for (const { heading, body } of sections) {
        expect(heading).not.toBe("");
        if (body.kind === "table") {
          expect(body.rows.length, heading).toBeGreaterThan(0);
          for (const row of body.rows) {
            expect(row, heading).toHaveLength(body.columns.length);
            for (const cell of row) expect(cell.length, heading).toBeGreaterThan(0);
          }
        } else expect(body.steps.length, heading).toBeGreaterThan(0);
        counted += 1;
      }
    }
    expect(counted).toBeGreaterThan(50);
  });

  it("have a place on the sheet for every reading, once", () => {
    const keys = written.sheet.map(({ entry, position, height, direction }) =>
      [entry, position, height, direction].join("|"),
    );
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys.length).toBeGreaterThan(100);
    const trial = written.papers.find(({ id }) => id === "trial-sheet")!;
    expect(blanksOf(trial).length).toBeGreaterThanOrEqual(keys.length);
  });

  it("read as Markdown with as many rows", () => {
    for (const paper of written.papers) {
      const text = renderPaperMarkdown(paper, written.head);
      expect(text).toContain(`# ${paper.title}`);
      expect(text).toContain(written.head.hash);
      expect(text).not.toContain("undefined");
    }
    expect(html).not.toContain("undefined");
    expect(html).not.toContain("NaN");
  });
});

function blanksOf({ sections }: Paper): readonly Piece[] {
  const cells = sections.flatMap(({ body }) =>
    body.kind === "table"
      ? body.rows.flat()
      : body.steps.flatMap(({ lines, grid }) => [
          ...lines,
          ...(grid?.rows ?? []).flatMap((row) => row.cells),
        ]),
  );
  return cells.flat().filter((piece) => typeof piece === "object" && piece.kind === "blank");
}

const FOUR = `trialfit: "1"
name: Four <b>bold</b>, invented
use: street
block: { layout: inline, cylinders: "4", mainBearings: "5", bore: 86.500 mm ± 0.010 }
crankshaft: { stroke: 90 mm ± 0.02 }
`;

const rule = (fact: string): RuleFile =>
  ({
    ...ruleFiles.find(({ id }) => id === "cap-register-fit")!,
    id: "a-rule-of-our-own",
    title: "The camshaft runs true",
    parts: ["camshaft"],
    stages: ["trial-assembly"],
    requires: { all: [{ fact, operator: "lessThanInclusive", value: { fact: "limit.most" } }] },
    limits: {
      most: { value: "0.2 mm", range: ["0.1 mm", "0.3 mm"], standing: "common-practice", movedBy: ["use"] },
    },
    otherwise: { work: "measure", weight: "caution", do: "Measure again." },
    because: "It is an example.",
    examples: [
      { name: "runs true", given: { [fact]: "0.1 mm ± 0" }, verdict: "holds" },
      { name: "does not", given: { [fact]: "0.3 mm ± 0" }, verdict: "fails" },
    ],
  }) as unknown as RuleFile;

describe("a paper", () => {
  it("has a field more when a rule with a measurement is added", async () => {
    const build = readBuildText(FOUR, "four");
    const only = ["trial-sheet"];
    const without = await writePapers(build, { date: "2026-03-14", only });
    const own = await writePapers(build, {
      date: "2026-03-14",
      only,
      rules: [...ruleFiles, rule("camshaft.bearingClearance")],
    });
    const entries = (papers: WrittenPapers) => new Set(papers.sheet.map(({ entry }) => entry));
    expect([...entries(own)].filter((entry) => !entries(without).has(entry))).toEqual([
      ...(entries(without).has("camshaft.bearingClearance") ? [] : ["camshaft.bearingClearance"]),
    ]);
    expect(entries(own)).toContain("camshaft.bearingClearance");
  }, 120_000);

  it("that is held shows what it waits for, and no torque", async () => {
    const held = await writePapers(readBuildText(FOUR, "four"), {
      date: "2026-03-14",
      only: ["torque-sheet", "assembly-sequence"],
    });
    const html = renderPaperHtml(held, "A4");
    expect(held.papers.length).toBeGreaterThan(0);
    for (const { gate } of held.papers) expect(gate!.waitsFor.length).toBeGreaterThan(0);
    expect(html).toContain("HELD: not to be used yet.");
    expect(html).not.toContain("<section>");
    const passed = renderPaperHtml(
      await writePapers(readBuildText(FOUR, "four"), {
        date: "2026-03-14",
        only: ["assembly-sequence"],
        overrides: pass,
      }),
      "Letter",
    );
    expect(passed).toContain("Let pass by J. B.:");
    expect(passed).toContain("<section>");
    expect(passed).toContain("size: Letter");
  }, 120_000);

  it("shows text as text", async () => {
    const html = renderPaperHtml(
      await writePapers(readBuildText(FOUR, "four"), { date: "2026-03-14", only: ["proposal"] }),
      "A4",
    );
    expect(html).toContain("Four &lt;b&gt;bold&lt;/b&gt;");
    expect(html).not.toContain("<b>");
  }, 120_000);

  it("prints inch, metric, or both side by side", async () => {
    const bore = async (units: "metric" | "inch" | "both") => {
      const papers = await writePapers(readBuildText(FOUR, "four"), {
        date: "2026-03-14",
        only: ["proposal"],
        units,
      });
      return numbersOf(renderPaperHtml(papers, "A4"))
        .filter(({ of }) => of === "block.bore")
        .map(({ text }) => text);
    };
    expect(await bore("metric")).toEqual(["86.500 mm", "0.010 mm"]);
    expect(await bore("inch")).toEqual(["3.40551 in", "0.00039 in"]);
    expect(await bore("both")).toEqual(["86.500 mm / 3.40551 in", "0.010 mm / 0.00039 in"]);
  }, 120_000);

  it("loses nothing of a size in the other system: fractions, signs as words, where a pressure is meant", async () => {
    const { report, ...papers } = await writePapers(demo("harrow-eight"), {
      date: "2026-03-14",
      only: ["engine-record"],
      units: "both",
    });
    const sizes = new Map(report.fields.map((one) => [one.path, one.nominal]));
    const numbers = numbersOf(renderPaperHtml(papers, "A4")).filter(({ of }) => sizes.has(of));
    let read = 0;
    for (const { of, value, text } of numbers) {
      if (value !== sizes.get(of)) continue;
      for (const part of text.split(" / ")) {
        const [, number = "", rest = ""] = /^(-?[\d.e-]+) ?(.*)$/.exec(part) ?? [];
        const unit = rest
          .split(" ")
          .map((_, index, words) => words.slice(0, words.length - index).join(" "))
          .find((one) => findUnit(one) !== undefined);
        const found = findUnit(unit ?? "1")!;
        const si = toSi(rationalFromDecimal(number)!, found);
        const off = Math.abs(Math.abs(si) - Math.abs(value));
        const half = 0.51 * 10 ** -(number.split(".")[1]?.length ?? 0);
        const step = Math.abs(
          toSi(rationalFromDecimal(half.toFixed(8))!, found) - toSi(rationalFromDecimal("0")!, found),
        );
        expect(off, `${of}: ${text}`).toBeLessThanOrEqual(Math.max(step, 6e-3 * Math.abs(value)));
        expect(si === 0, `${of}: ${text}`).toBe(value === 0);
        read += 1;
      }
    }
    expect(read).toBeGreaterThan(500);
    const shown = (path: string) => numbers.find(({ of }) => of === path)?.text;
    expect(shown("mainFastener.threadDiameter")).toBe("11.113 mm / 0.4375 in");
    expect(shown("piston.crownVolume")).toBe("1.30 cm3 / 0.0793 in3 dome");
    expect(shown("combustion.sparkTiming")).toMatch(/^29\.0 deg before TDC$/);
  }, 300_000);

  it("that does not exist is refused, and so is passing without a reason", async () => {
    const build = readBuildText(FOUR, "four");
    const date = "2026-03-14";
    await expect(writePapers(build, { date, only: ["torque-sheets"] })).rejects.toThrow(
      /did you mean torque-sheet/,
    );
    await expect(
      writePapers(build, { date, overrides: new Map([["torque-sheet", { by: "J. B.", because: " " }]]) }),
    ).rejects.toThrow(/without a name or a reason/);
  });

  it("of a change says what moved", async () => {
    const after = readBuildText(FOUR.replace("stroke: 90 mm", "stroke: 94 mm"), "four");
    const papers = await writePapers(after, {
      date: "2026-03-14",
      only: ["change-record"],
      before: readBuildText(FOUR, "four"),
    });
    const text = renderPaperMarkdown(papers.papers[0]!, papers.head);
    expect(text).toContain("90 mm ± 0.02");
    expect(text).toContain("94 mm ± 0.02");
  }, 120_000);
});
