import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import * as mechanics from "./index.ts";
import { coverageOf, namedInProperties } from "./propertyCoverage.test-support.ts";

const root = fileURLToPath(new URL(".", import.meta.url));
const texts = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".test.ts"))
  .map((file) => readFileSync(`${root}/${file}`, "utf8"));
const functions = Object.entries(mechanics).flatMap(([name, value]) =>
  typeof value === "function" ? [name] : [],
);

/** Public functions that no property test names, and why. */
const exempt: Readonly<Record<string, string>> = {};

/** What there was when this was last raised: a test that drops out is missed. */
const LEAST = { functions: 1, properties: 1, solved: 1 };

test("every public function is named in a property test, or is exempt with a reason", () => {
  const coverage = coverageOf(functions, texts, exempt);
  expect(coverage.faults).toEqual([]);
  expect(coverage.functions).toBeGreaterThanOrEqual(LEAST.functions);
  expect(coverage.properties).toBeGreaterThanOrEqual(LEAST.properties);
  expect(coverage.solved).toBeGreaterThanOrEqual(LEAST.solved);
});

describe("the check", () => {
  const file = (body: string) => `
    import { fc, test } from "@fast-check/vitest";
    import { solvesBack } from "../check/solvesBack.test-support.ts";
    import { area, volume as size } from "./sizes.ts";
    ${body}`;
  const found = (body: string) => coverageOf(["area"], [file(body)], {}).faults;
  const none = "area: found in no property test, expected in one";
  const other = `test.prop([fc.nat()])("grows", (x) => expect(x).toBe(x));`;

  test.each([
    ["a property", `test.prop([fc.nat()])("grows", (x) => expect(area(x)).toBe(x));`],
    ["an assertion", `test("grows", () => fc.assert(fc.property(fc.nat(), (x) => area(x) > x)));`],
    [
      "a helper",
      `const twice = (x: number) => 2 * area(x);\ntest.prop([fc.nat()])("", (x) => twice(x) > x);`,
    ],
    [
      "a function",
      `function twice(x: number) { return area(x); }\ntest.prop([fc.nat()])("", (x) => twice(x) > x);`,
    ],
    ["inputs found back", `solvesBack(area, { side: goesAs(2, 1, 2) });`],
  ])("sees %s", (_, body) => expect(found(body)).toEqual([]));

  test.each([
    ["an example", `test("one", () => expect(area(1)).toBe(1));`],
    ["a comment and a title", `test.prop([fc.nat()])("area", (x) => expect(x).toBe(x)); // area`],
    ["a key and a member", `test.prop([fc.nat()])("", (x) => expect({ area: x }.area).toBe(x));`],
    ["a name of its own", `test.prop([fc.nat()])("", (area) => expect(area).toBe(1));`],
    ["a part of what is drawn", `test.prop([fc.nat()])("", ({ area }) => expect(area).toBe(1));`],
    ["a helper that no property asks", `const twice = (x: number) => 2 * area(x);`],
  ])("is not content with %s", (_, body) => expect(found(`${other}\n${body}`)).toEqual([none]));

  test("knows a function by the name it was exported under", () => {
    const { names, solved } = namedInProperties(file(`solvesBack(size, { side: goesAs(3, 1, 2) });`));
    expect([...names]).toEqual(["solvesBack", "volume"]);
    expect([...solved]).toEqual(["volume"]);
  });

  test("fails when there is nothing to look at, and on an exemption that is stale", () => {
    expect(coverageOf([], [], {}).faults).toEqual(["no functions", "no property tests"]);
    const reason = "drawn by hand in its own test";
    const texts = [file(`solvesBack(area, { side: goesAs(2, 1, 2) });`)];
    expect(coverageOf(["area"], texts, { area: reason, gone: reason }).faults).toEqual([
      "area: exempt, but a property test names it",
      "gone: exempt, but no public function",
    ]);
    expect(coverageOf(["area", "length"], texts, { length: "" }).faults).toEqual([
      "length: exempt without a reason",
    ]);
    expect(() => namedInProperties("const = 3;")).toThrow();
  });
});
