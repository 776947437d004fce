import { fields, parseDimension, readBuild, readBuildText } from "trialfit";
import { describe, expect, test } from "vitest";
import { rewrite, writeEntry } from "../live/Entry.ts";
import { demoFiles } from "./demoFiles.ts";
import { entryOf } from "./entryOf.ts";

describe("a dimension of a demo build in pieces", () => {
  test("put together again, reads as the demo build has it", () => {
    let seen = 0;
    for (const [id, text] of demoFiles) {
      for (const [path, value] of readBuildText(text, id).values) {
        const spec = fields.get(path)?.spec;
        if (spec?.kind !== "dimension" || value.kind !== "dimension" || value.positions !== undefined)
          continue;
        if (
          value.toleranceFrom !== "stated" &&
          value.toleranceFrom !== "default" &&
          value.toleranceFrom !== "none"
        )
          continue;
        const words = Object.keys(spec.signs ?? {}).concat(spec.places ?? []);
        const entry = writeEntry(entryOf(value, words, spec.unit))!;
        const [part, name] = path.split(".") as [string, string];
        const again = readBuild({ trialfit: "1", name: "again", [part]: { [name]: entry } }).values.get(path);
        expect(again, `${path}: ${entry}`).toMatchObject({
          nominal: value.nominal,
          low: value.low,
          high: value.high,
        });
        seen += 1;
      }
    }
    expect(seen).toBeGreaterThan(300);
  });
});

describe("the same size in another unit", () => {
  const millimetre = { zero: 0, step: 0.001 };
  const inch = { zero: 0, step: 0.0254 };
  // The inch is 25.4 mm exactly: NIST SP 811 (2008), appendix B.8.
  test.each([
    ["25.4", "1"],
    ["94", "3.70079"],
    ["7/16", "0.0172244"],
    ["1 1/2", "0.0590551"],
  ])("%s mm is %s in", (text, expected) => {
    expect(rewrite(text, millimetre, inch)).toBe(expected);
    const si = parseDimension(`${text} mm`, { unit: "mm" }).nominal;
    expect(Number(expected) * 0.0254).toBeCloseTo(si, 6);
  });
  test("a temperature moves its zero, a tolerance of it does not", () => {
    const celsius = { zero: 273.15, step: 1 };
    const fahrenheit = { zero: 2298.35 / 9, step: 5 / 9 };
    expect(rewrite("100", celsius, fahrenheit)).toBe("212");
    expect(rewrite("10", celsius, fahrenheit, true)).toBe("18");
  });
  test("what is no number stays", () => {
    expect(rewrite("4 %", millimetre, inch)).toBe("4 %");
    expect(rewrite("", millimetre, inch)).toBe("");
  });
});
