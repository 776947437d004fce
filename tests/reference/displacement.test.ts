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

function error({ number }: (typeof engines)[number]): number {
  const displacement = engineDisplacement({
    bore: number("bore_in") * INCH,
    stroke: number("stroke_in") * INCH,
    cylinders: number("cylinders"),
  });
  return displacement / (number("displacement_cuin") * INCH ** 3) - 1;
}

test("displacement of every engine whose printed figures agree", () => {
  const consistent = engines.filter(({ cells }) => cells.consistent === "yes");
  expect(consistent.length).toBeGreaterThanOrEqual(LEAST_CONSISTENT);
  for (const engine of consistent) expect(Math.abs(error(engine)), engine.line).toBeLessThan(TOLERANCE);
});

test("the engines set aside are those whose printed figures disagree", () => {
  const others = engines.filter(({ cells }) => cells.consistent === "no");
  expect(others.length).toBeGreaterThanOrEqual(LEAST_INCONSISTENT);
  for (const engine of others) expect(Math.abs(error(engine)), engine.line).toBeGreaterThan(TOLERANCE);
});
