import { afterAll, expect, test } from "vitest";
import rows from "../../../../tests/reference/published.json" with { type: "json" };

interface Measure {
  readonly value: number | string | readonly (number | string)[];
  readonly unit: string;
}
interface Row {
  readonly id: string;
  readonly source: string;
  readonly inputs: Readonly<Record<string, Measure>>;
  readonly expected: Readonly<Record<string, Measure>>;
  readonly tolerance: Readonly<Record<string, { abs?: number; rel?: number } | string>>;
}

const inch = 0.0254;
const pound = 0.45359237 * 9.80665;

/** What one of each printed unit is in SI. */
const units: Readonly<Record<string, number>> = {
  "-": 1,
  "%": 0.01,
  m: 1,
  cm: 1e-2,
  mm: 1e-3,
  micrometre: 1e-6,
  in: inch,
  in2: inch ** 2,
  in3: inch ** 3,
  cm3: 1e-6,
  m3: 1,
  "in3/s": inch ** 3,
  "mm3/s": 1e-9,
  "l/min": 1e-3 / 60,
  mm2: 1e-6,
  kg: 1,
  deg: Math.PI / 180,
  rpm: (2 * Math.PI) / 60,
  "rev/s": 2 * Math.PI,
  "m/s": 1,
  "mm/s": 1e-3,
  "ft/min": (12 * inch) / 60,
  "m/s2": 1,
  N: 1,
  kN: 1e3,
  kip: 1000 * pound,
  lbf: pound,
  "N m": 1,
  "kN m": 1e3,
  "lbf in": pound * inch,
  "lbf ft": pound * 12 * inch,
  "N mm": 1e-3,
  Pa: 1,
  kPa: 1e3,
  hPa: 1e2,
  MPa: 1e6,
  GPa: 1e9,
  "N/mm2": 1e6,
  "MN/m2": 1e6,
  bar: 1e5,
  kpsi: (1000 * pound) / inch ** 2,
  "lbf/in2": pound / inch ** 2,
  "Mlbf/in": (1e6 * pound) / inch,
  "N/mm": 1e3,
  "mPa s": 1e-3,
  cP: 1e-3,
  W: 1,
  kW: 1e3,
  "g mm": 1e-6,
  K: 1,
  "kg/s": 1,
  "1/C": 1,
  "1e-6/C": 1e-6,
  C: 1,
  F: 1,
  psia: pound / inch ** 2,
  J: 1,
  kJ: 1e3,
  "kJ/kg": 1e3,
  "MJ/kg": 1e6,
  "J/kg K": 1,
  "kJ/kg K": 1e3,
  "kg/m3": 1,
  "g/cm3": 1e3,
  "kg/h": 1 / 3600,
  "kg/kWh": 1 / 3.6e6,
  "l/h": 1e-3 / 3600,
  "1/min": 1 / 60,
  s: 1,
  // A head in metres of its liquid.
  "m Hg": 1,
  "cm water": 1e-2,
  ft: 12 * inch,
  microreyn: (1e-6 * pound) / inch ** 2,
};

function inSi(where: string, value: number, unit: string): number {
  const factor = units[unit];
  if (factor === undefined) throw new Error(`${where}: no factor for the unit "${unit}"`);
  return value * factor;
}

/** How many comparisons with published numbers this test file has made. */
let compared = 0;
/** The published numbers that were compared so far, by their row. */
export const comparedNumbers = new Map<string, Set<string>>();

/** One row of the published values: its inputs in SI, and a comparison against what it expects. */
export class PublishedRow {
  readonly id: string;
  readonly source: string;
  readonly #row: Row;
  /** Numbers as they are printed: for rows in units of a layout, or of the book, that have no factor here. */
  readonly #printed: boolean;

  constructor(id: string, printed = false) {
    this.#printed = printed;
    const row = (rows as unknown as readonly Row[]).find((candidate) => candidate.id === id);
    if (row === undefined) throw new Error(`no published row ${id}`);
    this.id = id;
    this.source = row.source;
    this.#row = row;
  }

  /** The names of the numbers that the row prints. */
  get names(): readonly string[] {
    return Object.keys(this.#row.expected);
  }

  /** An input in SI. */
  input(name: string): number {
    return this.inputs(name)[0]!;
  }

  /** An input that is a list, in SI. */
  inputs(name: string): readonly number[] {
    const measure = this.#row.inputs[name];
    if (measure === undefined) throw new Error(`${this.id}: no input ${name}`);
    const values = Array.isArray(measure.value) ? measure.value : [measure.value];
    return values.map((value) => {
      // A printed fraction such as 2/3 counts as its quotient.
      const [over, under = "1"] = String(value).split("/");
      return this.#inSi(name, Number(over) / Number(under), measure.unit);
    });
  }

  #inSi(name: string, value: number, unit: string): number {
    return this.#printed ? value : inSi(`${this.id} ${name}`, value, unit);
  }

  /** Compares an SI value with the published one, within the published tolerance. */
  agrees(name: string, actual: number): void {
    const tolerance = this.#row.tolerance[name];
    if (typeof tolerance !== "object") throw new Error(`${this.id}: no number ${name}`);
    const { expected } = this.#printedNumber(name);
    this.#compare(name, actual, tolerance.abs ?? (tolerance.rel ?? Number.NaN) * Math.abs(expected));
  }

  /** The same, within a share of it: for what a book read from a chart, or put straight between tabulated points. */
  agreesAsRead(name: string, actual: number, share: number): void {
    this.#compare(name, actual, share * Math.abs(this.#printedNumber(name).expected));
  }

  /** Holds a published number to an interval in SI: of a table that says how far the usual value may be off. */
  lies(name: string, low: number, high: number): void {
    this.#compare(name, (low + high) / 2, (high - low) / 2 / this.#printedNumber(name).factor);
  }

  #printedNumber(name: string): { readonly expected: number; readonly factor: number } {
    const measure = this.#row.expected[name];
    if (measure === undefined) throw new Error(`${this.id}: no number ${name}`);
    return { expected: Number(measure.value), factor: this.#inSi(name, 1, measure.unit) };
  }

  #compare(name: string, actual: number, allowed: number): void {
    const { expected, factor } = this.#printedNumber(name);
    const found = actual / factor;
    const where = `${this.id} ${name} (${this.source}): ${found} against ${expected}`;
    expect(Math.abs(found - expected), where).toBeLessThanOrEqual(allowed * (1 + 1e-9));
    compared++;
    const names = comparedNumbers.get(this.id) ?? new Set();
    comparedNumbers.set(this.id, names.add(name));
  }
}

/** The key of a number recomputed without the book's series and roundings. */
export const exact = (name: string) => `${name}__recomputed_exact`;

function testRow(published: PublishedRow, least: number, check: (row: PublishedRow) => void): void {
  test(`${published.id}: ${published.source}`, () => {
    const before = compared;
    check(published);
    expect(compared - before, "published numbers compared").toBeGreaterThanOrEqual(least);
  });
}

/** One test for one published row; it fails when it compares nothing. */
export function row(id: string, check: (row: PublishedRow) => void): void {
  testRow(new PublishedRow(id), 1, check);
}

/** The same with the row's numbers as printed; it fails when it compares fewer than it says. */
export function printedRow(id: string, numbers: number, check: (row: PublishedRow) => void): void {
  testRow(new PublishedRow(id, true), numbers, check);
}

/**
 * Fails the file when it compares fewer published numbers than it once did, so that a row cannot drop out
 * unseen. The number goes down only when a published number is withdrawn.
 */
export function compareAtLeast(least: number): void {
  afterAll(() => expect(compared, "published numbers compared").toBeGreaterThanOrEqual(least));
}
