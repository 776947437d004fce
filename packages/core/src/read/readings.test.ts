import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import type { DimensionValue } from "./FieldValue.ts";
import { InputError } from "./Problem.ts";
import { readBuildText } from "./readBuild.ts";
import { readPosition } from "./readPosition.ts";

const head = 'trialfit: "1"\nname: Test\n';
const engine = 'block:\n  layout: inline\n  cylinders: "4"\n  mainBearings: "5"\n';
const read = (body: string, path: string) =>
  readBuildText(`${head}${body}`, "b.yaml").values.get(path) as DimensionValue;
const refused = (body: string): string => {
  try {
    readBuildText(`${head}${body}`, "b.yaml");
  } catch (error) {
    if (error instanceof InputError)
      return error.problems
        .map(({ line, field, found, expected }) => `${line} ${field}: ${found}; expected ${expected}`)
        .join("\n");
    throw error;
  }
  throw new Error("nothing was refused");
};

describe("a measured value", () => {
  it("has the uncertainty that it states", () => {
    const bore = read(`${engine}  bore: { value: 88.512 mm, uncertainty: 0.003 mm }\n`, "block.bore");
    expect(bore).toMatchObject({ provenance: "measured", toleranceFrom: "stated" });
    expect(bore.low).toBeCloseTo(0.088509, 9);
    expect(bore.high).toBeCloseTo(0.088515, 9);
  });
  it("has that of a listed instrument, and the field's usual width for one that is not listed", () => {
    const listed = read(`${engine}  bore: { value: 88.512 mm, instrument: dial bore gauge }\n`, "block.bore");
    expect(listed).toMatchObject({ provenance: "measured", toleranceFrom: "instrument" });
    expect(listed.high - listed.nominal).toBeCloseTo(5e-6, 9);
    const other = read(
      `${engine}  bore: { value: 88.512 mm, instrument: grandfather's gauge }\n`,
      "block.bore",
    );
    expect(other.toleranceFrom).toBe("default");
  });
  it("is refused with an instrument that measures something else, or two widths, or a sheet's uncertainty", () => {
    expect(refused(`${engine}  bore: { value: 88.5 mm, instrument: burette }\n`)).toMatch(
      /burette, which measures something else/,
    );
    expect(refused(`${engine}  bore: { value: 88.5 mm ± 0.01, uncertainty: 0.01 mm }\n`)).toMatch(
      /one of the two/,
    );
    expect(
      refused(`${engine}  bore: { value: 88.5 mm, provenance: data-sheet, uncertainty: 0.01 mm }\n`),
    ).toMatch(/uncertainty of something data-sheet/);
    expect(refused(`${engine}  bore: { value: 88.5 mm, uncertainty: "0.01" }\n`)).not.toBe("");
    expect(refused(`${engine}  bore: { instrument: dial bore gauge }\n`)).toMatch(/a value, or readings/);
  });
});

describe("the way of making", () => {
  it("gives the tolerance where none is stated", () => {
    const deck = read(`${engine}  deckHeight: { value: 227 mm, made: milled }\n`, "block.deckHeight");
    expect(deck.toleranceFrom).toBe("making");
    expect(deck.high - deck.low).toBeCloseTo(185e-6, 9);
    const stated = read(
      `${engine}  deckHeight: { value: 227 mm ± 0.02, made: milled }\n`,
      "block.deckHeight",
    );
    expect(stated.toleranceFrom).toBe("stated");
  });
  it("is refused where it says nothing", () => {
    expect(refused("piston: { mass: { value: 400 g, made: milled } }\n")).toMatch(/a length/);
    expect(refused(`${engine}  bore: { value: 88 mm, made: whittled }\n`)).toMatch(/lapped, honed/);
  });
});

describe("readings by position", () => {
  const grid =
    "{ top: { along: 88.512 mm, across: 88.516 mm }, middle: [88.511 mm, 88.513 mm], bottom: 88.508 mm }";
  it("give size, taper and out-of-round", () => {
    const bore = read(
      `${engine}  bore:\n    uncertainty: 0.002 mm\n    readings: { 1: ${grid}, 2: 88.51 mm, 3: 88.5 mm, 4: 88.52 mm }\n`,
      "block.bore",
    );
    const first = bore.positions!["1"]!;
    expect(first.form!.taper).toBeCloseTo(6e-6, 10);
    expect(first.form!.outOfRound).toBeCloseTo(4e-6, 10);
    expect(first.low).toBeCloseTo(0.088506, 9);
    expect(first.high).toBeCloseTo(0.088518, 9);
    expect(bore.low).toBeCloseTo(0.088498, 9);
    expect(bore.high).toBeCloseTo(0.088522, 9);
    expect(bore.provenance).toBe("measured");
  });
  it("leave the value beside them to the others", () => {
    const bore = read(
      `${engine}  bore:\n    value: 88.50 mm ± 0.01\n    instrument: dial bore gauge\n    readings: { 2: 88.53 mm }\n`,
      "block.bore",
    );
    expect(bore.elsewhere).toMatchObject({ provenance: "data-sheet", nominal: 0.0885 });
    expect(bore.low).toBeCloseTo(0.08849, 9);
  });
  it.each([
    ["a number without a unit", "{ 1: 88.5 mm, 2: 88.51 }", /^8 block.bore.readings.2: .*without a unit/],
    ["a tolerance on a reading", "{ 1: 88.5 mm ± 0.01 }", /the reading alone/],
    [
      "a position that is not there",
      "{ 1: 88.5 mm, 7: 88.5 mm }",
      /block.bore.readings.7: cylinder 7; .*1 to 4/,
    ],
    ["no readings", "{}", /no readings/],
    ["an impossible size", "{ 1: 885 mm }", /outside what this dimension can be/],
    ["a word for a number", "{ one: 88.5 mm }", /one/],
  ])("are refused with %s", (_, readings, message) => {
    expect(refused(`${engine}  bore:\n    readings: ${readings}\n`)).toMatch(message);
  });
  it("are refused for what an engine has once", () => {
    expect(refused("headGasket: { compressedThickness: { readings: { 1: 1 mm } } }\n")).toMatch(
      /one value: an engine has this dimension once/,
    );
  });
  test.prop([
    fc.array(fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 1, maxLength: 4 }), {
      minLength: 1,
      maxLength: 4,
    }),
  ])("lie about their mean, and forms are never negative nor wider than all of them", (heights) => {
    const named = Object.fromEntries(
      heights.map((height, index) => [
        `h${index}`,
        Object.fromEntries(height.map((one, direction) => [`d${direction}`, one])),
      ]),
    );
    const { mean, least, most, form } = readPosition(named, Number);
    expect(mean).toBeGreaterThanOrEqual(least - 1e-9);
    expect(mean).toBeLessThanOrEqual(most + 1e-9);
    for (const one of Object.values(form)) {
      expect(one).toBeGreaterThanOrEqual(0);
      expect(one).toBeLessThanOrEqual(most - least + 1e-9);
    }
    expect(form.taper === undefined).toBe(heights.length === 1);
  });
});
