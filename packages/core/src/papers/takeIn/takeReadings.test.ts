import { describe, expect, it } from "vitest";
import { BUILD_FORMAT } from "../../read/buildSchema.ts";
import { sheetColumns } from "../print/sheetRows.ts";
import { takeReadings } from "./takeReadings.ts";

const build = `trialfit: "${BUILD_FORMAT}"
name: A four, invented
block:
  layout: inline
  cylinders: "4"
  mainBearings: "5"
  bore: 86.500 mm ± 0.010 # planned
  deckHeight: { value: 220.00 mm ± 0.03, note: from the sheet }
piston: { crownVolume: 5.2 cm3 dish ± 0.3 }
camshaft: { endPlay: { value: 0.12 mm, provenance: measured, instrument: dial indicator, by: A. N., on: 2026-03-01 } }
`;

const row = (cells: Readonly<Record<string, string>>) =>
  sheetColumns.map((column) => `"${(cells[column] ?? "").replaceAll('"', '""')}"`).join(",");
const sheet = (...rows: readonly Readonly<Record<string, string>>[]) =>
  [sheetColumns.join(","), ...rows.map(row)].join("\r\n");

const bore = { entry: "block.bore", unit: "mm", position: "2", height: "top", direction: "across" };
const take = (...rows: readonly Readonly<Record<string, string>>[]) =>
  takeReadings(build, "four.yaml", sheet(...rows), "filled.csv");

describe("readings that come back", () => {
  it("stand in the build with who, when, with what and in which state", () => {
    const {
      text,
      build: read,
      taken,
      refused,
    } = take({
      ...bore,
      reading: "86.507",
      instrument: "bore gauge",
      uncertainty: "0.003",
      "part temperature": "20.5",
      joint: "torque plate",
      by: "B. K.",
      on: "2026-03-02",
    });
    expect(refused).toEqual([]);
    expect(taken).toHaveLength(1);
    expect(text).toContain("# planned");
    const value = read.values.get("block.bore");
    expect(value).toMatchObject({
      provenance: "measured",
      instrument: "bore gauge",
      taken: { by: "B. K.", on: "2026-03-02", temperature: "20.5 degC", joint: "torque plate" },
      positions: { 2: { nominal: 0.086507 } },
    });
  });

  it("are held to what was planned, not to a reading at another place", () => {
    const exact = { ...bore, uncertainty: "0.001", instrument: "bore gauge" };
    const first = take({ ...exact, reading: "86.507" });
    expect(first.refused).toEqual([]);
    const next = (reading: string) =>
      takeReadings(first.text, "four.yaml", sheet({ ...exact, position: "3", reading }), "filled.csv")
        .refused;
    expect(next("86.45")).toEqual([]);
    expect(next("88.45")[0]?.expected).toContain("near 86.5 mm, which the build predicts");
  });

  it("take the word that carries the sign", () => {
    const { build: read, refused } = take({
      entry: "piston.crownVolume",
      unit: "cm3",
      position: "1",
      reading: "5.3 dish",
    });
    expect(refused).toEqual([]);
    expect(read.values.get("piston.crownVolume")).toMatchObject({ positions: { 1: { nominal: 5.3e-6 } } });
  });

  it("leave the planned size to the places that were not measured, until there is none", () => {
    const rows = ["1", "2", "3", "4"].map((position) => ({ ...bore, position, reading: `86.50${position}` }));
    const { text: partly, build: some } = take(...rows.slice(0, 3));
    expect(partly).toContain("86.500 mm ± 0.010");
    expect(some.values.get("block.bore")).toMatchObject({ elsewhere: { nominal: 0.0865 } });
    const { build: all } = take(...rows);
    const value = all.values.get("block.bore")!;
    expect(value).not.toHaveProperty("elsewhere");
    expect(value).toMatchObject({ note: expect.stringContaining("planned 86.500 mm ± 0.010") });
  });

  it("of several places come together", () => {
    const { build: read, taken } = take(
      { ...bore, reading: "86.507", by: "B. K." },
      { ...bore, direction: "along", reading: "86.505", by: "C. L." },
      { ...bore, position: "3", reading: "86.502", by: "C. L." },
    );
    expect(taken).toHaveLength(3);
    expect(read.values.get("block.bore")).toMatchObject({
      taken: { by: "B. K.; C. L." },
      positions: { 2: { form: { outOfRound: expect.closeTo(2e-6, 9) } } },
    });
  });
});

describe("readings that are hardly what was meant", () => {
  it.each([
    ["865.07", "mm", /ten times the prediction/],
    ["8.6507", "mm", /a tenth of the prediction/],
    ["86.507", "in", /between|25\.4 times/],
    ["3.4058", "mm", /over 25\.4/],
    ["43.25", "mm", /half of the prediction/],
    ["87.9", "mm", /far outside/],
  ])("%s %s is refused with the prediction", (reading, unit, looks) => {
    const { taken, refused, text } = take({ ...bore, unit, reading });
    expect(taken).toEqual([]);
    expect(refused).toHaveLength(1);
    expect(refused[0]!.found + refused[0]!.expected).toMatch(looks);
    expect(refused[0]).toMatchObject({ file: "filled.csv", line: 2 });
    expect(text).toContain("bore: 86.500 mm ± 0.010");
  });

  it("are taken with a reason, which is kept", () => {
    const { taken, text } = take({
      ...bore,
      reading: "87.9",
      "correction because": "bored to the next size",
    });
    expect(taken).toHaveLength(1);
    expect(text).toContain("bored to the next size");
  });

  it.each([
    [{ entry: "block.boer", unit: "mm", reading: "1" }, /block\.boer/, "block.bore"],
    [{ ...bore, position: "5", reading: "86.5" }, /5/, undefined],
    [{ ...bore, position: "", reading: "86.5" }, /nothing/, undefined],
    [{ ...bore, unit: "", reading: "86.5" }, /nothing/, undefined],
    [{ ...bore, unit: "kg", reading: "86.5" }, /measures something else/, undefined],
    [{ ...bore, reading: "eighty" }, /no number/, undefined],
    [{ ...bore, reading: "86.507", on: "yesterday" }, /./, undefined],
    [{ ...bore, reading: "86.507", "part temperature": "warm" }, /no number/, undefined],
  ])("row %j is refused", (cells, found, near) => {
    const { taken, refused } = take(cells as Readonly<Record<string, string>>);
    expect(taken).toEqual([]);
    expect(refused).toHaveLength(1);
    expect(refused[0]!.found).toMatch(found);
    expect(refused[0]!.didYouMean).toBe(near);
  });

  it("do not hold up the other rows", () => {
    const { taken, refused } = take(
      { ...bore, reading: "865" },
      { ...bore, direction: "along", reading: "86.505" },
    );
    expect(taken).toHaveLength(1);
    expect(refused).toHaveLength(1);
  });
});

describe("what was measured before", () => {
  const endPlay = { entry: "camshaft.endPlay", unit: "mm" };

  it("is not overwritten without a reason", () => {
    const { taken, refused, text } = take({ ...endPlay, reading: "0.15" });
    expect(taken).toEqual([]);
    expect(refused[0]!.expected).toMatch(/nothing measured is overwritten/);
    expect(text).toBe(build);
  });

  it("is kept beside its correction", () => {
    const { build: read, taken } = take({
      ...endPlay,
      reading: "0.15",
      "correction because": "gauge was loose",
      by: "B. K.",
      on: "2026-03-03",
    });
    expect(taken[0]).toMatchObject({ instead: "0.12 mm" });
    expect(read.values.get("camshaft.endPlay")).toMatchObject({
      nominal: 0.00015,
      taken: { replaces: [{ was: "0.12 mm", because: "gauge was loose", by: "B. K.", on: "2026-03-03" }] },
    });
  });

  it("comes in again unchanged", () => {
    const first = take({ ...bore, reading: "86.507" });
    const again = takeReadings(first.text, "four.yaml", sheet({ ...bore, reading: "86.507" }), "filled.csv");
    expect(again).toMatchObject({ known: 1, taken: [], refused: [] });
    expect(again.text).toBe(first.text);
  });
});

describe("a sheet as a whole", () => {
  it("may use semicolons, another order of columns, and lack what is not asked for", () => {
    const { taken } = takeReadings(
      build,
      "f",
      "reading;unit;entry;position\n220.01;mm;block.deckHeight;1\n",
      "s",
    );
    expect(taken).toHaveLength(1);
  });

  it.each([
    ["entry,unit,readin\n", /readin/],
    ["entry,unit\n", /no column "reading"/],
    ["", /nothing/],
    ['entry,unit,reading\n"block.bore,mm,1\n', /not CSV/],
    ["entry,unit,reading\nblock.bore,mm,86,507\n", /4 cells/],
  ])("%j is refused", (text, message) => {
    expect(() => takeReadings(build, "f", text, "s.csv")).toThrow(message);
  });
});
