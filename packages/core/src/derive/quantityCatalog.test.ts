import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath, pathToFileURL } from "node:url";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { checkDimensions, checkFormulas } from "./formulaChecks.test-support.ts";
import { quantities } from "./generated/quantities.ts";
import { checkHot, noGaps } from "./hotValues.test-support.ts";
import type { Quantity } from "./Quantity.ts";
import {
  checkExamples,
  checkGraph,
  checkShapes,
  checkSources,
  checkSymbols,
  type Findings,
} from "./quantityCatalog.test-support.ts";
import { checkScaling } from "./scalingChecks.test-support.ts";
import { departures } from "./scalingDepartures.test-support.ts";
import { checkReasons, reasons } from "./withoutFormula.test-support.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const listed = new Set(
  Object.keys(parse(readFileSync(here("../../../../rules/sources.yaml"), "utf8")) as object),
);
const root = here("./quantities");
const files = readdirSync(root, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".ts"));
const DRAWS = 50;
/** Quantities whose computation is told in words: a new one had better have a formula. */
const MOST_IN_WORDS = 133;
/** Quantities without a formula whose units are checked only in part; a new one had better have a formula. */
const MOST_DEPARTURES = 27;

/** Gaps at the measuring temperature, when this was last raised. */
const LEAST_GAPS = 65;

function expectClean({ checked, faults }: Findings, least: number): void {
  expect(faults).toEqual([]);
  expect(checked).toBeGreaterThanOrEqual(least);
}

describe("the catalog of quantities", () => {
  it("has one quantity in a file, with the name of the file and in the folder of its system", async () => {
    const ids = await Promise.all(
      files.map(async (file) => {
        const exported = (await import(/* @vite-ignore */ pathToFileURL(`${root}/${file}`).href)) as Record<
          string,
          Quantity
        >;
        expect(Object.keys(exported)).toHaveLength(1);
        const [[name, one]] = Object.entries(exported) as [[string, Quantity]];
        expect([`${one.system}/${one.id}.ts`, name]).toEqual([file.replaceAll("\\", "/"), one.id]);
        return one.id;
      }),
    );
    expect(ids.length).toBeGreaterThanOrEqual(340);
    expect([...quantities.keys()].sort()).toEqual(ids.sort());
  });
  it("rests on fields and on one another, never on itself", () => expectClean(checkGraph(quantities), 1500));
  it("names sources that are listed", () => expectClean(checkSources(quantities, listed), 400));
  it("computes its examples", () => expectClean(checkExamples(quantities), 360));
  it("computes what its formulae say", () => expectClean(checkFormulas(quantities, DRAWS), 200 * DRAWS));
  it("balances its units: all of them, by formula or by a change of units", () => {
    const byFormula = checkDimensions(quantities);
    const byScaling = checkScaling(quantities, departures);
    expectClean(byFormula, 200);
    expectClean(byScaling, 100);
    expect(byFormula.checked + byScaling.checked).toBe(quantities.size);
    expect(Object.keys(departures).length).toBeLessThanOrEqual(MOST_DEPARTURES);
  });
  it("gives a formula wherever one can be, and says why where not", () => {
    const { checked, faults } = checkReasons(quantities, reasons);
    expect(faults).toEqual([]);
    expect(checked).toBeGreaterThan(0);
    expect(checked).toBeLessThanOrEqual(MOST_IN_WORDS);
  });
  it("gives every gap a hot value or a reason to be cold only", () =>
    expectClean(checkHot(quantities, noGaps), LEAST_GAPS));
  it("tells its symbols apart and prints in known units", () => expectClean(checkSymbols(quantities), 1700));
  it("is monotone where it says so", () => expectClean(checkShapes(quantities), 8000));
});
