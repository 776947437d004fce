import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { comparedNumbers } from "../../packages/mechanics/src/check/published.test-support.ts";
import { leftOut } from "./leftOut.ts";
import published from "./published.json" with { type: "json" };

/** Rows and numbers that are compared, so that none drops out unseen. It goes down only when one is withdrawn. */
const LEAST_ROWS = 102;
const LEAST_NUMBERS = 448;
const SHORTEST_REASON = 15;

// The tests that compare published numbers run here once more, before what they compared is counted.
const self = fileURLToPath(import.meta.url);
const files = ["../../packages/mechanics/src", "."]
  .map((folder) => fileURLToPath(new URL(folder, import.meta.url)))
  .flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) => `${folder}/${file}`),
  )
  .filter((file) => file.endsWith(".test.ts") && file.replaceAll("/./", "/") !== self)
  .filter((file) => readFileSync(file, "utf8").includes("published.test-support.ts"));
for (const file of files) await import(/* @vite-ignore */ file);

/** Beside a number that the book has by a series or with roundings on the way. */
const RECOMPUTED = "__recomputed_exact";
const isCompared = (id: string, name: string) => comparedNumbers.get(id)?.has(name) ?? false;
const printed = published.map(({ id, expected }) => ({ id, names: Object.keys(expected) }));
const reasonFor = (id: string, name: string) => {
  const row = leftOut[id];
  return typeof row === "object" ? row[name] : row;
};

test("every printed number is compared by a test, or left out with a reason", () => {
  const stand = printed.flatMap(({ id, names }) =>
    names.map((name) => ({
      number: `${id} ${name}`,
      isCompared: isCompared(id, name) || isCompared(id, name + RECOMPUTED),
      reason: reasonFor(id, name),
    })),
  );
  const pick = (isCompared: boolean, hasReason: boolean) =>
    stand
      .filter((one) => one.isCompared === isCompared && (one.reason !== undefined) === hasReason)
      .map(({ number }) => number);
  expect(pick(false, false), "neither compared nor left out").toEqual([]);
  expect(pick(true, true), "compared, so its reason for being left out is stale").toEqual([]);
  for (const { number, reason } of stand)
    if (reason !== undefined) expect(reason.length, number).toBeGreaterThan(SHORTEST_REASON);
  const compared = [...comparedNumbers.values()].reduce((sum, names) => sum + names.size, 0);
  console.log(
    `published: ${compared} numbers of ${comparedNumbers.size} rows compared, of ${stand.length} of ${printed.length}`,
  );
  expect(compared).toBeGreaterThanOrEqual(LEAST_NUMBERS);
  expect(comparedNumbers.size).toBeGreaterThanOrEqual(LEAST_ROWS);
});

test("what is left out is there", () => {
  const known = new Map(printed.map(({ id, names }) => [id, names]));
  for (const [id, reason] of Object.entries(leftOut)) {
    expect(known.has(id), id).toBe(true);
    if (typeof reason === "object")
      for (const name of Object.keys(reason)) expect(known.get(id), id).toContain(name);
  }
});
