import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { fields } from "../read/fieldCatalog.ts";
import { parseSource } from "../read/parseSource.ts";
import { syntaxOf } from "../read/syntaxOf.ts";
import { parseDimension } from "./parseDimension.ts";
import { joinDimension, splitDimension } from "./splitDimension.ts";

const length = { unit: "mm" };

describe("a dimension in pieces", () => {
  test.each([
    ["104.000 mm ± 0.008", length, ["104.000", "mm", "0.008", ""]],
    ["3.484 in +0.001/-0", length, ["3.484", "in", "+0.001/-0", ""]],
    ["1 7/16 inch", length, ["1 7/16", "in", "", ""]],
    ["9.6 ± 0.1", { unit: "1" }, ["9.6", "1", "0.1", ""]],
    ["1.3 cc dome ± 0.1", { unit: "cm3", words: ["dish", "dome"] }, ["1.3", "cm3", "0.1", "dome"]],
    [
      "70.0 mm below crank axis",
      { unit: "mm", words: ["below crank axis"] },
      ["70.0", "mm", "", "below crank axis"],
    ],
    ["13 % ± 3", { unit: "%" }, ["13", "%", "3", ""]],
    ["78 bar ± 4 %", { unit: "bar" }, ["78", "bar", "4 %", ""]],
    ["21.5e-6 1/K ± 0.2e-6", { unit: "1/K" }, ["21.5e-6", "1/K", "0.2e-6", ""]],
  ] as const)("%s", (text, syntax, [number, unit, tolerance, word]) => {
    expect(splitDimension(text, syntax)).toEqual({ number, unit, tolerance, word });
  });
  test("what cannot be read has no pieces", () => {
    for (const text of ["", "104", "104 mmm", "104,5 mm", "mm 104", "104 kg", "104 mm ±"])
      expect(splitDimension(text, length)).toBeUndefined();
  });
  test("every dimension of the demo builds comes apart, and together says the same", () => {
    let count = 0;
    for (const name of ["harrow-eight", "larkspur-hill"]) {
      const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
      for (const [part, entries] of Object.entries(parseSource(text, name).data as Record<string, object>))
        for (const [field, entry] of typeof entries === "object" ? Object.entries(entries) : []) {
          const spec = fields.get(`${part}.${field}`)?.spec;
          const written = typeof entry === "string" ? entry : entry.value;
          if (spec?.kind !== "dimension" || written === undefined) continue;
          const syntax = syntaxOf(spec);
          const pieces = splitDimension(written, syntax);
          expect(pieces, `${part}.${field}: ${written}`).toBeDefined();
          const again = { ...syntax, wordRequired: false };
          expect(parseDimension(joinDimension(pieces!), again)).toEqual(parseDimension(written, again));
          count += 1;
        }
    }
    expect(count).toBeGreaterThan(300);
  });
  test.prop([fc.string({ maxLength: 30 })])("never throws, whatever is written", (text) => {
    const pieces = splitDimension(text, length);
    if (pieces !== undefined)
      expect(parseDimension(joinDimension(pieces), length).nominal).toBe(
        parseDimension(text, length).nominal,
      );
  });
});
