import { readFileSync } from "node:fs";
import { engineDisplacement } from "@trialfit/mechanics";
import { expect, test } from "vitest";

const INCH = 0.0254;
/** The set prints bore and stroke to a hundredth of an inch and the displacement to a cubic inch. */
const TOLERANCE = 0.02;
/** Engines of the set, so that none drops out unseen. */
const LEAST_CONSISTENT = 76;
const LEAST_INCONSISTENT = 17;

const [head = "", ...lines] = readFileSync(new URL("automobile-1985.csv", import.meta.url), "utf8")
  .trim()
  .split("\n");
const names = head.split(",");
const engines = lines.map((line) => {
  const cells = Object.fromEntries(line.split(",").map((cell, column) => [names[column]!, cell]));
  return { line, cells, number: (name: string) => Number(cells[name]) };
});

type Engine = (typeof engines)[number];

function error({ number }: Pick<Engine, "number">): number {
  const displacement = engineDisplacement({
    bore: number("bore_in") * INCH,
    stroke: number("stroke_in") * INCH,
    cylinders: number("cylinders"),
  });
  return displacement / (number("displacement_cuin") * INCH ** 3) - 1;
}

/** How many engines have the displacement that is printed. */
const agreeing = (rows: readonly Engine[]) => rows.filter((row) => Math.abs(error(row)) < TOLERANCE).length;

test("displacement of every engine whose printed figures agree", () => {
  const consistent = engines.filter(({ cells }) => cells.consistent === "yes");
  expect(consistent.length).toBeGreaterThanOrEqual(LEAST_CONSISTENT);
  for (const engine of consistent) expect(Math.abs(error(engine)), engine.line).toBeLessThan(TOLERANCE);
});

test("every engine is marked one way or the other, and none agrees by chance", () => {
  const marked = engines.filter(({ cells }) => ["yes", "no"].includes(cells.consistent!));
  expect(marked).toHaveLength(engines.length);
  expect(engines.length).toBeGreaterThanOrEqual(LEAST_CONSISTENT + LEAST_INCONSISTENT);
  const consistent = engines.filter(({ cells }) => cells.consistent === "yes");
  expect(agreeing(consistent)).toBe(consistent.length);
  expect(agreeing([])).toBe(0);
  // A bore or a stroke that is 5 % too large is noticed in every row.
  for (const slip of ["bore_in", "stroke_in"]) {
    const broken = consistent.map(({ number, ...row }) => ({
      ...row,
      number: (name: string) => number(name) * (name === slip ? 1.05 : 1),
    }));
    expect(agreeing(broken), slip).toBe(0);
  }
});

test("the engines set aside are those whose printed figures disagree", () => {
  const others = engines.filter(({ cells }) => cells.consistent === "no");
  expect(others.length).toBeGreaterThanOrEqual(LEAST_INCONSISTENT);
  for (const engine of others) expect(Math.abs(error(engine)), engine.line).toBeGreaterThan(TOLERANCE);
});
