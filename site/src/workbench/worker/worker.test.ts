import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import {
  type DimensionPieces,
  evaluate,
  joinDimension,
  parseDimension,
  parseSource,
  readBuildText,
  unitOf,
  unitsLike,
} from "trialfit";
import { describe, expect } from "vitest";
import type { Entry, FromWorker, ItemView, Readings, ReportView, Wanted } from "../protocol.ts";
import { UnpackReport } from "../state/UnpackReport.ts";
import { Bench } from "./Bench.ts";
import { inUnit } from "./inUnit.ts";
import { PackReport } from "./PackReport.ts";
import { placeWords } from "./placeWords.ts";
import { Rescaling } from "./Rescaling.ts";
import { readEntries } from "./readEntries.ts";
import { readingRows, readingsOf } from "./readingRows.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { writeEntry } from "./writeEntry.ts";

const demo = (name: string) =>
  readFileSync(new URL(`../../../../packages/core/demo/${name}.yaml`, import.meta.url), "utf8");
const small = `trialfit: "1"
name: Small
block: { bore: 88 mm ± 0.01, cylinders: "4" }
crankshaft: { stroke: 92 mm ± 0.02 }
confirmations:
  rod-bolt-face-seats: { seen: yes, by: A. B., on: 2026-03-14, how: blue and a lamp }
`;

describe("entries of a form", () => {
  test("every entry of the demo builds goes into the form and comes out the same", () => {
    let count = 0;
    for (const name of ["harrow-eight", "larkspur-hill"]) {
      const data = parseSource(demo(name), name).data as Record<string, Record<string, unknown>>;
      for (const [path, entry] of Object.entries(readEntries(data))) {
        const [part, field] = path.split(".") as [string, string | undefined];
        const raw = field === undefined ? data[part] : data[part]![field];
        const { value } = writeEntry(path, entry);
        // A dimension is written as the form writes it: the same size, tolerance and word.
        if (entry.form === "pieces")
          expect(readEntries({ [part]: { [field!]: value } })[path]).toEqual(entry);
        else expect(value, path).toEqual(raw);
        count += 1;
      }
    }
    expect(count).toBeGreaterThan(500);
  });
  test("readings by position, sizes to be found and aims are entries, and come out as they were", () => {
    const raw = {
      block: {
        bore: {
          value: "88.50 mm ± 0.01",
          instrument: "dial bore gauge",
          uncertainty: "0.002 mm",
          readings: {
            "1": { top: { along: "88.512 mm", across: "88.516 mm" }, bottom: "88.508 mm" },
            "2": ["88.51 mm", "88.511 mm"],
            "3": "88.5 mm",
          },
        },
        deckHeight: { value: "227 mm", made: "milled" },
      },
      piston: { compressionHeight: "? 28 mm to 34 mm in steps of 0.05 mm", mass: "?" },
      aims: { compressionRatio: "at least 10.5" },
    };
    const entries = readEntries(raw);
    expect(entries["block.bore"]).toMatchObject({
      form: "readings",
      unit: "mm",
      beside: { number: "88.50" },
    });
    expect((entries["block.bore"] as Readings).rows).toHaveLength(6);
    expect(entries["block.deckHeight"]).toMatchObject({ form: "pieces", about: { made: "milled" } });
    expect(entries["piston.compressionHeight"]).toMatchObject({
      form: "wanted",
      from: "28 mm",
      step: "0.05 mm",
    });
    for (const [path, entry] of Object.entries(entries)) {
      const [part, field] = path.split(".") as ["block", "bore"];
      expect(writeEntry(path, entry).value, path).toEqual(raw[part][field]);
    }
    expect(Object.keys(entries)).toHaveLength(5);
  });
  test("a number alone is in the unit of its box; what was not read is left out", () => {
    const row = (at: string, reading: string) => ({ at, height: "", direction: "", reading });
    const readings: Readings = {
      form: "readings",
      unit: "in",
      rows: [row("1", "3.4849"), row("2", ""), row("3", "88.51 mm")],
      beside: undefined,
      about: {},
    };
    expect(writeEntry("block.bore", readings).value).toEqual({
      readings: { "1": "3.4849 in", "3": "88.51 mm" },
    });
    expect(writeEntry("block.bore", { ...readings, rows: [row("1", " ")] }).value).toBeUndefined();
    const wanted: Wanted = { form: "wanted", unit: "mm", from: "28", to: "", step: "" };
    expect(writeEntry("piston.compressionHeight", wanted).value).toMatch(/^\? 28 mm to \d+ mm$/);
  });
  const word = fc.constantFrom("", "top", "bottom", "a b");
  test.prop([
    fc.uniqueArray(
      fc.record({
        at: fc.constantFrom("1", "2", "8"),
        height: word,
        direction: word,
        reading: fc.constantFrom("1 mm", "2 mm"),
      }),
      {
        minLength: 1,
        maxLength: 12,
        selector: ({ at, height, direction }) => `${at} ${height} ${direction}`,
      },
    ),
  ])("rows of readings keep every reading, and are the same once they were written", (rows) => {
    const once = readingRows(readingsOf(rows))!;
    expect(once.map(({ at, reading }) => `${at} ${reading}`).sort()).toEqual(
      rows.map(({ at, reading }) => `${at} ${reading}`).sort(),
    );
    expect(readingRows(readingsOf(once))).toEqual(once);
  });
  test("confirmations are entries too", () => {
    const entry = readEntries(parseSource(small, "small").data)["confirmations.rod-bolt-face-seats"];
    expect(entry).toEqual({
      form: "seen",
      seen: "yes",
      by: "A. B.",
      on: "2026-03-14",
      how: "blue and a lamp",
    });
  });
  test.prop([
    fc.integer({ min: 1, max: 99999 }),
    fc.constantFrom("mm", "bar", "N m", "degC", "cm3"),
    fc.constantFrom("", "0.5", "2 %", "+0.3/-0.1"),
    fc.array(fc.nat(), { minLength: 1, maxLength: 6 }),
  ])("looked at in other units and back, a size is what was typed", (digits, unit, tolerance, picks) => {
    const typed = { number: String(digits / 100), unit, tolerance, word: "" };
    const units = unitsLike(unitOf(unit));
    const scales = new Rescaling();
    let pieces: DimensionPieces = typed;
    for (const pick of picks) pieces = scales.inUnit("a.b", pieces, units[pick % units.length]!.symbol);
    expect(scales.inUnit("a.b", pieces, unit)).toEqual(typed);
    const other = { ...pieces, number: `${pieces.number}1` };
    expect(scales.inUnit("a.b", other, pieces.unit)).toEqual(other);
  });
  test.prop([
    fc.integer({ min: 1, max: 99999 }),
    fc.constantFrom("mm", "bar", "N m", "degC", "cm3"),
    fc.constantFrom("", "0.5", "2 %", "+0.3/-0.1"),
    fc.nat(),
  ])("another unit is the same size", (digits, unit, tolerance, pick) => {
    const pieces = { number: String(digits / 100), unit, tolerance, word: "" };
    const units = unitsLike(unitOf(unit));
    const other = units[pick % units.length]!.symbol;
    const [before, after] = [pieces, inUnit(pieces, other)].map((one) =>
      parseDimension(joinDimension(one), { unit }),
    );
    const scale = Math.abs(before!.nominal) + 1e-9;
    expect(Math.abs(after!.nominal - before!.nominal) / scale).toBeLessThan(1e-7);
    // A share of a temperature is a share of the number as it is written, which is another in another unit.
    if (unit === "degC" && tolerance.endsWith("%")) return;
    expect(Math.abs((after!.plus ?? 0) - (before!.plus ?? 0)) / scale).toBeLessThan(1e-7);
    expect(Math.abs((after!.minus ?? 0) - (before!.minus ?? 0)) / scale).toBeLessThan(1e-7);
  });
});

describe("reports on their way to the page", () => {
  const item = fc.record({
    title: fc.constantFrom("a", "b", "c", "d"),
    tone: fc.constantFrom("good" as const, "bad" as const),
    lines: fc.array(
      fc.record({ text: fc.constantFrom("1 mm", "2 mm"), tone: fc.constant("plain" as const) }),
      {
        maxLength: 2,
      },
    ),
  });
  const section = fc.record({ heading: fc.constantFrom("x", "y"), items: fc.array(item, { maxLength: 6 }) });
  test.prop([fc.array(fc.array(section, { maxLength: 4 }), { maxLength: 6 })])(
    "arrive as they were, and what is the same is not sent again",
    (reports) => {
      const [there, here] = [new PackReport(), new UnpackReport()];
      let before: readonly ItemView[] = [];
      for (const sections of reports) {
        const view = { title: "", lead: [], closing: [], wanted: [], counts: {}, sections } as unknown;
        const sent = structuredClone(there.pack(view as ReportView));
        const arrived = here.unpack(sent);
        expect(arrived).toEqual(view);
        const known = new Set(before.map((one) => JSON.stringify(one)));
        const whole = sent.sections.flatMap(({ items }) => items).filter((one) => typeof one !== "number");
        expect(whole.filter((one) => known.has(JSON.stringify(one)))).toEqual([]);
        before = arrived.sections.flatMap(({ items }) => items);
      }
    },
  );
  test("keep their items as the objects that they were", () => {
    const [there, here] = [new PackReport(), new UnpackReport()];
    const one = (text: string): ItemView => ({ title: text, tone: "good", lines: [] });
    const view = (...items: readonly ItemView[]) =>
      ({ sections: [{ heading: "x", items }] }) as unknown as ReportView;
    const first = here.unpack(there.pack(view(one("a"), one("b")))).sections[0]!.items;
    const second = here.unpack(there.pack(view(one("b"), one("c")))).sections[0]!.items;
    expect(second[0]).toBe(first[1]);
  });
});

describe("a file that is partly wrong", () => {
  test("is read without the wrong entries, each told with its path and what was expected", () => {
    const { build, troubles } = readWhatCan(small.replace("88 mm", "88"), "small.yaml");
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ path: "block.bore", line: 3 });
    expect(troubles[0]!.text).toMatch(/^Block: finished bore: .*without a unit.*expected/);
    expect(build?.values.has("block.bore")).toBe(false);
    expect(build?.values.has("crankshaft.stroke")).toBe(true);
  });
  test("names the place as people do, inside of an entry too", () => {
    expect(placeWords("block.bore", "block.bore")).toBe("Block: finished bore");
    expect(placeWords("block.bore", "block.bore.readings.3")).toBe("Block: finished bore, reading 3");
    expect(placeWords("aims.compressionRatio", "aims.compressionRatio")).toBe("Aim: Compression ratio");
    expect(placeWords("confirmations.a-rule", "confirmations.a-rule.on")).toBe(
      "What a person confirmed, the day",
    );
  });
  test("is not read at all where no entry is to blame", () => {
    for (const text of ["", "name: x", "a: [", small.replace("name: Small", "name: ''")]) {
      const { build, troubles } = readWhatCan(text, "small.yaml");
      expect(build).toBeUndefined();
      expect(troubles.length).toBeGreaterThan(0);
    }
  });
});

describe("the bench", () => {
  async function run(...messages: readonly Record<string, unknown>[]) {
    const told: FromWorker[] = [];
    const bench = new Bench((message) => told.push(structuredClone(message)));
    for (const [index, message] of messages.entries())
      await bench.take({ revision: index + 1, ...message } as Parameters<Bench["take"]>[0]);
    return told;
  }
  const last = <K extends FromWorker["kind"]>(told: readonly FromWorker[], kind: K) =>
    told.filter((one): one is Extract<FromWorker, { kind: K }> => one.kind === kind).at(-1)!;
  const open = { kind: "open", text: small, file: "small.yaml" };

  test("counts what the evaluator says", async () => {
    const told = await run(open);
    const { summary } = await evaluate(readBuildText(small));
    expect(last(told, "report").view.counts).toMatchObject({
      holds: summary.holds,
      fails: summary.fails,
      unknown: summary.unknown,
    });
    expect(last(told, "report").done).toBe(true);
    expect(last(told, "report").view.wanted.length).toBeGreaterThan(3);
  });
  test("writes an entry, and takes an empty one out", async () => {
    const mass: Entry = { form: "pieces", number: "410", unit: "g", tolerance: "1", word: "", about: {} };
    const told = await run(open, { kind: "write", path: "piston.mass", entry: mass });
    expect(last(told, "text").entries["piston.mass"]).toEqual(mass);
    const empty = await run(open, { kind: "write", path: "block.bore", entry: { ...mass, number: " " } });
    expect(last(empty, "text").entries["block.bore"]).toBeUndefined();
    expect(last(empty, "text").text).toContain("stroke");
  });
  test("takes apart a dimension that was typed whole into the box of its number", async () => {
    const before: Entry = {
      form: "pieces",
      number: "88",
      unit: "mm",
      tolerance: "0.01",
      word: "",
      about: {},
    };
    const typed = async (number: string, path = "block.bore", entry: Entry = before) =>
      last(await run(open, { kind: "write", path, entry: { ...entry, number } }), "text");
    const pieces = (number: string, unit: string, tolerance: string, word = "") => ({
      ...before,
      number,
      unit,
      tolerance,
      word,
    });
    const inch = await typed("3.5 in");
    // The tolerance keeps its width.
    expect(inch.entries["block.bore"]).toEqual(pieces("3.5", "in", "0.000393700787"));
    expect(inch.text).toContain("bore: 3.5 in ± 0.000393700787");
    expect(inch.troubles).toEqual([]);
    expect((await typed("95.5 ± 0.02")).entries["block.bore"]).toEqual(pieces("95.5", "mm", "0.02"));
    expect((await typed("95.5 mm +0.02/-0.01")).entries["block.bore"]).toEqual(
      pieces("95.5", "mm", "+0.02/-0.01"),
    );
    expect((await typed("3 1/2 in")).entries["block.bore"]).toMatchObject({ number: "3 1/2", unit: "in" });
    const crown = pieces("", "cm3", "0.2", "dish") as Entry;
    expect((await typed("4 cm3 dome", "piston.crownVolume", crown)).entries["piston.crownVolume"]).toEqual(
      pieces("4", "cm3", "0.2", "dome"),
    );
    for (const wrong of ["95,5", "3.5 inn", "3.5 kg", "95.5 ± much", "about 95"]) {
      const told = await typed(wrong);
      expect(told.troubles[0]?.path, wrong).toBe("block.bore");
      expect(told.troubles[0]?.text, wrong).toMatch(/^Block: finished bore: found .*expected/);
      expect(told.troubles[0]?.text).not.toContain("block.bore");
      // It stays in the box, so that the next number has its unit beside it.
      expect(told.entries["block.bore"]).toEqual({ ...before, number: wrong });
    }
  });
  test("says at the entry what cannot be read, and keeps what was typed", async () => {
    const wrong: Entry = { form: "pieces", number: "8x", unit: "mm", tolerance: "", word: "", about: {} };
    const told = await run(open, { kind: "write", path: "block.bore", entry: wrong });
    expect(last(told, "text").troubles[0]?.path).toBe("block.bore");
    expect(last(told, "text").text).toContain("bore: 8x");
    expect(last(told, "report").view.counts.unknown).toBeGreaterThan(0);
  });
  test("has no report for a file that is none", async () => {
    const told = await run({ ...open, text: "a: [" });
    expect(told.at(-1)!.kind).toBe("unread");
  });
});
