import { readFileSync } from "node:fs";
import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { quantities } from "../../derive/generated/quantities.ts";
import { withDefaults } from "../../derive/withDefaults.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { Nominals } from "../../trace/Nominals.ts";
import { solveAims } from "./solveAims.ts";
import type { Aim, Wanted } from "./Wanted.ts";

const demo = (name: string) =>
  readBuildText(readFileSync(new URL(`../../../demo/${name}.yaml`, import.meta.url), "utf8"));
const harrow = demo("harrow-eight");
const nominals = new Nominals(harrow);
const values = withDefaults(harrow);
const without = (paths: readonly string[]) => new Map([...values].filter(([path]) => !paths.includes(path)));
const length = (path: string, low: number, high: number, step = 5e-5): Wanted => ({
  path,
  low: low / 1000,
  high: high / 1000,
  step,
  unit: "mm",
});
const volume: Wanted = {
  path: "piston.crownVolume",
  low: -20e-6,
  high: 20e-6,
  step: 1e-7,
  unit: "cm3",
};
const aim = (id: string, kind: Aim["kind"] = "equal", value = nominals.size(id)!): Aim => ({
  id,
  kind,
  value,
  allowance: id.includes("atio") ? 0.02 : 6e-5,
  stated: true,
});
const solve = (wanted: readonly Wanted[], aims: readonly Aim[]) =>
  solveAims(without(wanted.map(({ path }) => path)), quantities, wanted, aims);

describe("sizes from aims", () => {
  test("compression height and crown volume come back from deck clearance and ratio", () => {
    const solved = solve(
      [length("piston.compressionHeight", 25, 40), volume],
      [aim("deckClearance"), aim("compressionRatio")],
    );
    expect(solved.state).toBe("solved");
    if (solved.state !== "solved") return;
    expect(solved.exact[0]).toBeCloseTo(nominals.size("piston.compressionHeight")!, 8);
    expect(solved.exact[1]).toBeCloseTo(nominals.size("piston.crownVolume")!, 9);
    expect(solved.sizes[0]).toBeCloseTo(0.033, 10);
    expect(solved.reached.every(({ met }) => met)).toBe(true);
    expect(solved.family).toBeUndefined();
  });
  test("rod length against compression height: a family, a millimetre for a millimetre", () => {
    const solved = solve(
      [length("connectingRod.length", 145, 165), length("piston.compressionHeight", 25, 40)],
      [aim("deckClearance")],
    );
    expect(solved.state).toBe("solved");
    if (solved.state !== "solved") return;
    expect(solved.family?.freedom).toBe(1);
    expect(solved.family!.moves[1]!.change).toBeCloseTo(-1, 4);
    expect(solved.family!.members.length).toBeGreaterThan(4);
    const sum = nominals.size("connectingRod.length")! + nominals.size("piston.compressionHeight")!;
    for (const member of solved.family!.members) expect(member[0]! + member[1]!).toBeCloseTo(sum, 4);
  });
  test("bounds from one side", () => {
    const solved = solve([length("connectingRod.length", 140, 170, 1e-4)], [aim("rodRatio", "least", 1.7)]);
    expect(solved.state).toBe("solved");
    if (solved.state === "solved")
      expect(solved.sizes[0]! / nominals.size("crankshaft.stroke")!).toBeGreaterThan(1.7 - 0.02);
  });
  test("aims that pull against each other are named, and no others", () => {
    const wanted = [length("piston.compressionHeight", 25, 40), volume];
    const solved = solve(wanted, [
      aim("deckClearance"),
      aim("compressionRatio"),
      aim("squishGap", "equal", nominals.size("squishGap")! + 0.001),
    ]);
    expect(solved.state).toBe("conflict");
    if (solved.state !== "conflict") return;
    expect(solved.conflict.map(({ id }) => id).sort()).toEqual(["deckClearance", "squishGap"]);
    expect(solved.bySteps).toBe(false);
  });
  test("steps too coarse are told apart from aims that conflict", () => {
    const solved = solve([length("piston.compressionHeight", 25, 40, 0.002)], [aim("deckClearance")]);
    expect(solved).toMatchObject({ state: "conflict", bySteps: true });
  });
  test("a stretch between two bends is found, though every descent is led away from it", () => {
    const [from, to] = [0.1, 0.1001];
    const bent = ({ x = 0 }: Readonly<Record<string, number>>) =>
      x < from ? 50 * (from - x) : x > to ? 10 - 50 * (x - to) : (10 * (x - from)) / (to - from);
    const solveBent = (shape: "monotone" | "guarded", formula: string | undefined) => {
      const deck = quantities.get("deckClearance")!;
      const bend = {
        ...deck,
        formula,
        id: "bend",
        unit: "1",
        inputs: { x: "block.bore" },
        routes: [],
        compute: bent,
        shape,
      };
      const wanted = [length("block.bore", 52, 139, 1e-6)];
      const aims: Aim[] = [{ id: "bend", kind: "equal", value: 5, allowance: 0.2, stated: true }];
      return solveAims(new Map(), new Map([["bend", { ...bend, choices: {}, tables: {} }]]), wanted, aims);
    };
    for (const cheap of [solveBent("monotone", undefined), solveBent("guarded", "x")])
      expect(cheap.state).toBe("solved");
    const solved = solveBent("monotone", "x");
    expect(solved.state).toBe("solved");
    if (solved.state === "solved") expect(solved.sizes[0]).toBeCloseTo(0.10005, 5);
    // Of a quantity that takes a search of its own nobody goes along the range: that is where this would be missed.
    expect(solveBent("guarded", undefined).state).toBe("conflict");
  });
  test("of several solutions one that can be ordered is taken", () => {
    const deck = quantities.get("deckClearance")!;
    // Met at 0.10 m and at a size that lies between the steps.
    const twice = ({ x = 0 }: Readonly<Record<string, number>>) => (x - 0.1) * (x - 0.12345) * 1e4;
    const both = {
      ...deck,
      id: "both",
      unit: "1",
      inputs: { x: "block.bore" },
      choices: {},
      tables: {},
      routes: [],
      compute: twice,
      shape: "monotone" as const,
    };
    const solved = solveAims(
      new Map(),
      new Map([["both", both]]),
      [length("block.bore", 70, 150, 1e-3)],
      [{ id: "both", kind: "equal", value: 0, allowance: 1e-3, stated: true }],
    );
    expect(solved.state).toBe("solved");
    if (solved.state === "solved") expect(solved.sizes[0]).toBeCloseTo(0.1, 9);
  });
  test("what is missing, and what no aim asks for, is a result", () => {
    const bare = new Map([...values].filter(([path]) => path !== "crankshaft.stroke"));
    expect(solveAims(bare, quantities, [volume], [aim("compressionRatio")])).toEqual({
      state: "missing",
      missing: expect.arrayContaining(["crankshaft.stroke"]),
    });
    expect(solve([volume], [aim("deckClearance")])).toEqual({
      state: "aimless",
      idle: ["piston.crownVolume"],
    });
  });
  test.prop(
    [
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: 0.02, max: 0.98, noNaN: true }),
      fc.double({ min: 0.1, max: 0.9, noNaN: true }),
    ],
    { numRuns: 40 },
  )("sizes drawn at random come back from what they give", (a, b, c) => {
    const wanted = [
      length("piston.compressionHeight", 30, 33.2, 1e-8),
      { ...volume, step: 1e-12 },
      length("headGasket.compressedThickness", 0.5, 2, 1e-8),
    ];
    const drawn = wanted.map(({ low, high }, index) => low + [a, b, c][index]! * (high - low));
    const known = new Map(values);
    for (const [index, { path }] of wanted.entries()) {
      const value = values.get(path);
      if (value?.kind === "dimension")
        known.set(path, { ...value, nominal: drawn[index]!, low: drawn[index]!, high: drawn[index]! });
    }
    const there = new Nominals({ ...harrow, values: known });
    const ids = ["deckClearance", "compressionRatio", "squishGap"];
    const reached = ids.map((id) => there.size(id));
    fc.pre(reached.every((value) => value !== undefined));
    const solved = solve(
      wanted,
      ids.map((id, index) => aim(id, "equal", reached[index]!)),
    );
    expect(solved.state).toBe("solved");
    if (solved.state !== "solved") return;
    for (const [index, size] of drawn.entries())
      expect(Math.abs(solved.exact[index]! - size) / (wanted[index]!.high - wanted[index]!.low)).toBeLessThan(
        1e-6,
      );
  });
});
