import { describe, expect, it } from "vitest";
import { readBuildText } from "../../read/readBuild.ts";
import { renderText } from "../../report/renderText.ts";
import { describeSolution } from "./describeSolution.ts";
import { solve } from "./solve.ts";

/** An invented four whose rod and pistons are open. */
const four = (rod: string, height: string, aims: Readonly<Record<string, string>>) =>
  readBuildText(
    JSON.stringify({
      trialfit: "1",
      name: "Invented four",
      block: { layout: "inline", cylinders: "4", bore: "86 mm", deckHeight: "225.00 mm" },
      crankshaft: { stroke: "94 mm" },
      connectingRod: { length: rod },
      piston: {
        compressionHeight: height,
        crownVolume: "? 0 cm3 to 25 cm3 dish",
        topLandHeight: "6 mm",
        topLandDiameter: "85.4 mm",
      },
      headGasket: { bore: "87 mm", compressedThickness: "1.0 mm" },
      cylinderHead: { chamberVolume: "44 cm3" },
      aims,
    }),
  );
const solved = (...build: Parameters<typeof four>) => solve(four(...build), { rules: [] });
const low = ["? 138 mm to 146 mm in steps of 0.5 mm", "? 26 mm to 31 mm in steps of 0.05 mm"] as const;
const wide = ["? 138 mm to 148 mm in steps of 0.5 mm", "? 26 mm to 36 mm"] as const;

describe("aims that cannot be met", () => {
  it("are named in every pair that pulls against each other, where three do", async () => {
    // They want strokes of 90.6 mm, 85.7 mm and 86.1 mm.
    const build = readBuildText(
      JSON.stringify({
        trialfit: "1",
        name: "Invented four",
        block: { layout: "inline", cylinders: "4", bore: "86 mm" },
        targets: { speed: "7000 rpm" },
        connectingRod: { length: "145 mm" },
        crankshaft: { stroke: "? 70 mm to 100 mm" },
        aims: { rodRatio: "1.6", meanPistonSpeed: "20 m/s", engineDisplacement: "2000 cm3" },
      }),
    );
    const solution = await solve(build, { rules: [] });
    expect(solution).toMatchObject({
      state: "conflict",
      conflicts: [
        { aims: ["rodRatio", "meanPistonSpeed"] },
        { aims: ["rodRatio", "engineDisplacement"] },
        { aims: ["meanPistonSpeed", "engineDisplacement"] },
      ],
    });
    const text = renderText(describeSolution(solution)).replaceAll(/\s+/g, " ");
    expect(text).toContain("at least one aim of each of these sets must be left out or eased");
  });
  it("by themselves are named each, with the nearest and the bounds that bind; others are met", async () => {
    const solution = await solved(...low, {
      deckClearance: "0.1 mm ± 0.02",
      compressionRatio: "10.5",
      rodRatio: "at least 1.54",
      squishGap: "at most 1 mm",
    });
    expect(solution).toMatchObject({
      state: "conflict",
      conflict: ["deckClearance"],
      conflicts: [
        { aims: ["deckClearance"], alone: { nearest: expect.closeTo(0.001, 9) } },
        { aims: ["squishGap"], alone: { nearest: expect.closeTo(0.002, 9) } },
      ],
    });
    if (solution.state !== "conflict") return;
    expect(solution.aims.map(({ id, met }) => [id, met])).toEqual([
      ["deckClearance", false],
      ["compressionRatio", true],
      ["rodRatio", true],
      ["squishGap", false],
    ]);
    expect(solution.fields.map(({ text }) => text)).toEqual([
      "146 mm",
      "31 mm",
      expect.stringMatching(/^1\.\d cm3 dish$/),
    ]);
    const text = renderText(describeSolution(solution)).replaceAll(/\s+/g, " ");
    expect(text).toContain(
      "Squish gap cannot be met by itself: least possible 2.000 mm, because Connecting rod: rod length ends at 146 mm and Piston: compression height ends at 31 mm.",
    );
  });
  it("together are named set by set, with no aim in two", async () => {
    const solution = await solved(...wide, {
      deckClearance: "0.1 mm ± 0.02",
      compressionRatio: "10.5",
      squishGap: "at most 1 mm",
    });
    expect(solution).toMatchObject({
      state: "conflict",
      conflicts: [{ aims: ["deckClearance", "squishGap"] }],
    });
    expect(renderText(describeSolution(solution))).toContain(
      "cannot be met together: Deck clearance, Squish gap.",
    );
  });
});

describe("what is said of a solution", () => {
  it("is the range that was wanted, and within what an aim without an allowance is met", async () => {
    const solution = await solved(...wide, {
      deckClearance: "0 mm to 0.1 mm",
      compressionRatio: "10.5",
      rodRatio: "1.55",
    });
    const text = renderText(describeSolution(solution)).replaceAll(/\s+/g, " ");
    expect(text).toContain("0.000 mm to 0.100 mm wanted");
    expect(text).toMatch(
      /10\.50 wanted; 10\.\d\d reached(, within ± 0\.0\d+: as near as was found on these steps)?/,
    );
    expect(text).toMatch(
      /1\.550 wanted; 1\.5\d\d reached, within ± 0\.00\d+: as near as was found on these steps/,
    );
  });
  it("says how a dimension moves along the family in the units of both", async () => {
    const solution = await solved(...wide, { deckClearance: "0.1 mm ± 0.02", compressionRatio: "10.5" });
    const text = renderText(describeSolution(solution)).replaceAll(/\s+/g, " ");
    expect(text).toMatch(
      /For each 1 mm more of Connecting rod: rod length: Piston: compression height −1(\.0+)? mm/,
    );
  });
  it("are members that meet the aims as the answer does, with what they reach", async () => {
    for (const allowance of [
      ["", ""],
      [" ± 0.005", " ± 0.05"],
    ]) {
      const aims = {
        deckClearance: `0.1 mm${allowance[0]}`,
        compressionRatio: `10.5${allowance[1]}`,
        rodRatio: "at least 1.5",
      };
      const solution = await solved(...wide, aims);
      if (solution.state !== "solved") throw new Error(solution.state);
      const members = solution.family!.members.map((one) => one.map(({ text }) => text).join(", "));
      expect(members).toContain("148 mm, 29.9 mm, 6.5 cm3 dish");
      expect(members.length).toBe(9);
      for (const reached of solution.family!.reached) {
        expect(reached[0]!.reached).toBeCloseTo(0.0001, 8);
        expect(reached.every(({ met }) => met)).toBe(true);
      }
      expect(renderText(describeSolution(solution)).replaceAll(/\s+/g, " ")).toContain(
        "rod length 148 mm, compression height 29.9 mm, crown volume 6.5 cm3 dish reaches Deck clearance 0.100 mm; Compression ratio 10.49; Rod ratio 1.574",
      );
    }
  });
  it("is where each size may lie if all aims are bounds: the same as by trying every combination", async () => {
    const build = {
      trialfit: "1",
      name: "Invented four",
      block: { layout: "inline", cylinders: "4", bore: "86 mm", deckHeight: "225 mm" },
      targets: { speed: "7200 rpm" },
      crankshaft: { stroke: "? 76 mm to 96 mm in steps of 1 mm" },
      connectingRod: { length: "? 120 mm to 150 mm in steps of 0.5 mm" },
      aims: { rodRatio: "at least 1.6", meanPistonSpeed: "at most 20 m/s" },
    };
    const solution = await solve(readBuildText(JSON.stringify(build)), { rules: [] });
    if (solution.state !== "solved") throw new Error(solution.state);
    const count = (length: number) => Array.from({ length }, (_, index) => index);
    const pairs = count(21).flatMap((one) =>
      count(61).map((other) => [0.076 + one * 0.001, 0.12 + other * 0.0005] as const),
    );
    const meeting = pairs.filter(
      ([stroke, rod]) => rod / stroke >= 1.5995 && 2 * stroke * (7200 / 60) <= 20.005,
    );
    const ends = [0, 1].map((index) => {
      const sizes = meeting.map((pair) => pair[index]!);
      return [expect.closeTo(Math.min(...sizes), 9), expect.closeTo(Math.max(...sizes), 9)];
    });
    expect(solution.ranges!.map((range) => [range.low, range.high])).toEqual(ends);
    expect(solution.family).toBeUndefined();
    expect(renderText(describeSolution(solution))).toContain("76 mm to 83 mm");
  });
});
