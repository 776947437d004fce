import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { because } from "./because.test-support.ts";
import { exportedFunctions } from "./exportedFunctions.test-support.ts";
import * as mechanics from "./index.ts";
import { namedInProperties } from "./namedInProperties.test-support.ts";
import { coverageOf } from "./propertyCoverage.test-support.ts";

const root = fileURLToPath(new URL(".", import.meta.url));
const files = readdirSync(root, { recursive: true, encoding: "utf8" });
const textsOf = (isWanted: (file: string) => boolean) =>
  files.filter(isWanted).map((file) => readFileSync(`${root}/${file}`, "utf8"));
const texts = textsOf((file) => file.endsWith(".test.ts"));
const sources = textsOf((file) => file.endsWith(".ts") && !file.includes(".test"));
const functions = Object.entries(mechanics).flatMap(([name, value]) =>
  typeof value === "function" ? [name] : [],
);

/** Functions whose inputs are not found back from an answer, and why. */
const notSolved = {
  ...because(
    "checks numbers and answers nothing: held to what it refuses",
    `requireAll requireThat requireCounts requireThread requireSliderCrank requireTorsionalChain requireSweep
    requireMovingMasses requireRevolvingMasses requireClosedCycle requireValveOverPiston requireValveSpring`,
  ),
  ...because(
    "turns places, not sizes: held to keep distances, and to its own way back",
    "inLeaningFrame rodFrame rodPointInBlock",
  ),
  ...because(
    "a piece of a shape, with many numbers: held to what it encloses and joins; the whole is found back",
    "outlineCurve meshAround cylinderObstacle oppositeObstacle railObstacle camshaftObstacle roundObstacle",
  ),
  ...because(
    "seeks over any function or list that it is given: held to tops known beforehand",
    "greatestBetween greatestOverTurn greatestOverCycle meanOverCycle leastOverOverlap",
  ),
  ...because(
    "the unchecked or prepared half of a function whose inputs are found back: held to be equal to it",
    `burntShareOver pistonTravelOver pistonAccelerationOver pistonToValveAxialOver cylinderVolume heatForPeak runPrepared traceOf motoredGasSpeed boreFactor
    stateFactor mobilityAt filmColumn bigEndJointLoadOver leastFilmOverSamples shortBearingLoadOver pistonVelocityOver pistonTravelBy crankForcesBy`,
  ),
  ...because(
    "sweeps any rod past any thing, for the clearances whose inputs are found back: held to samples",
    "sweepOutline nearerThan nearestOf rodContactOver rodToCylinderProfile boreHollow",
  ),
  ...because(
    "is itself a search back, in steps of 0.1 µm whose number jumps: held to give the clearance that it is asked for",
    "notchDepthNeeded notchHeightNeeded",
  ),
};
/** There is none that no property test names. */
const exempt = { properties: {}, solved: notSolved };

/** What there was when this was last raised: a test that drops out is missed. */
const LEAST = { functions: 384, properties: 704, solved: 337, inner: 15 };

test("every public function is in a property test, and its inputs are found back, or a reason is given", () => {
  const coverage = coverageOf(functions, texts, exempt);
  expect(coverage.faults).toEqual([]);
  expect(coverage.functions).toBeGreaterThanOrEqual(LEAST.functions);
  expect(coverage.properties).toBeGreaterThanOrEqual(LEAST.properties);
  expect(coverage.solved).toBeGreaterThanOrEqual(LEAST.solved);
});

test("what the folders share among themselves is in a property test as well", () => {
  const named = new Set(texts.flatMap((text) => [...namedInProperties(text).names]));
  const inner = sources
    .flatMap(exportedFunctions)
    .map(({ name }) => name)
    .filter((name) => !functions.includes(name));
  expect(inner.filter((name) => !named.has(name))).toEqual([]);
  expect(inner.length).toBeGreaterThanOrEqual(LEAST.inner);
});

describe("the check", () => {
  const file = (body: string) => `
    import { fc, test } from "@fast-check/vitest";
    import { solvesBack } from "../check/solvesBack.test-support.ts";
    import { area, volume as size } from "./sizes.ts";
    ${body}`;
  const reason = "drawn by hand in its own test";
  const bare = { properties: {}, solved: {} };
  const found = (body: string) =>
    coverageOf(["area"], [file(body)], { ...bare, solved: { area: reason } }).faults;
  const none = "area: found no property test, expected one";
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

  test("asks for inputs found back as well", () => {
    const asked = `test.prop([fc.nat()])("grows", (x) => expect(area(x)).toBe(x));`;
    expect(coverageOf(["area"], [file(asked)], bare).faults).toEqual([
      "area: found no solve-back of its inputs, expected one",
    ]);
    const solves = `solvesBack(area, { side: goesAs(2, 1, 2) });`;
    expect(coverageOf(["area"], [file(solves)], bare)).toEqual({
      functions: 1,
      properties: 1,
      solved: 1,
      faults: [],
    });
  });

  test("fails when there is nothing to look at, and on an exemption that is stale or bare", () => {
    expect(coverageOf([], [], bare).faults).toEqual(["no functions", "no property tests"]);
    const solves = [file(`solvesBack(area, { side: goesAs(2, 1, 2) });`)];
    expect(
      coverageOf(["area"], solves, { ...bare, properties: { area: reason, gone: reason } }).faults,
    ).toEqual(["area: exempt, but it has a property test", "gone: exempt, but no public function"]);
    const blank = { length: "" };
    expect(coverageOf(["area", "length"], solves, { properties: blank, solved: blank }).faults).toEqual([
      "length: exempt without a reason",
      "length: exempt without a reason",
    ]);
    expect(() => namedInProperties("const = 3;")).toThrow();
  });
});
