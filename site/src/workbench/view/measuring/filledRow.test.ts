import { type SheetRow, sheetColumns } from "trialfit/papers";
import { describe, expect, it } from "vitest";
import { decimal, filledRow, shownReading } from "./filledRow.ts";

const blank = Object.fromEntries(sheetColumns.map((column) => [column, ""])) as SheetRow;

describe("a row that is filled in on a screen", () => {
  it("carries what was given once, with the tool of its unit", () => {
    const row = { ...blank, entry: "block.bore", unit: "mm" };
    const tools = {
      mm: { instrument: "bore gauge ", uncertainty: "0,003" },
      g: { instrument: "scales", uncertainty: "1" },
    };
    const given = {
      by: " A. N.",
      on: "2026-03-14",
      temperature: "20,5",
      joint: "",
      tools,
      units: "written",
    } as const;
    expect(filledRow(row, "86,504", given, " why ")).toEqual({
      ...row,
      reading: "86.504",
      instrument: "bore gauge",
      uncertainty: "0.003",
      "part temperature": "20.5",
      by: "A. N.",
      on: "2026-03-14",
      "correction because": "why",
    });
    expect(filledRow({ ...row, unit: "in" }, "3.4", given, "").instrument).toBe("");
  });

  it("takes one comma between figures for a decimal sign, and nothing else", () => {
    expect(["86,5", "-0,2", ",35", " 1.5 "].map(decimal)).toEqual(["86.5", "-0.2", ".35", "1.5"]);
    expect(["1,234,5", "1,234.5", "86,5 mm"].map(decimal)).toEqual(["1,234,5", "1,234.5", "86,5 mm"]);
  });

  it("shows a reading as a number where it is in the unit of the column", () => {
    expect(shownReading("86.504 mm", "mm")).toBe("86.504");
    expect(shownReading("3.4056 in", "mm")).toBe("3.4056 in");
    expect(shownReading("1.3 cm3 dome", "cm3")).toBe("1.3 dome");
    expect(shownReading("9.4", "1")).toBe("9.4");
    expect(shownReading(undefined, "mm")).toBe("");
  });
});
