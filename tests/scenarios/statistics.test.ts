import type { RuleFile } from "@trialfit/rules";
import { describeReport, evaluate, type Report, readBuild, renderText } from "trialfit";
import { describe, expect, it } from "vitest";

const ruleOf = (id: string, operator: string, value: string) =>
  ({
    id,
    title: `The piston has ${operator} ${value} of room in its bore`,
    system: "pistons",
    parts: ["block", "piston"],
    stages: ["choose"],
    requires: { fact: "pistonToBoreClearance", operator, value },
    otherwise: { work: "machine", weight: "stop", do: "Hone it." },
    because: "Only for tests of the evaluator.",
    sources: [{ id: "definition" }],
    examples: [
      { name: "settled", given: { pistonToBoreClearance: "0.06 mm" }, verdict: "holds" },
      { name: "missing", given: {}, verdict: "unknown" },
    ],
  }) as unknown as RuleFile;

const rules = [
  ruleOf("half-of-them", "greaterThanInclusive", "0.06 mm"),
  ruleOf("all-of-them", "greaterThanInclusive", "0.04 mm"),
  ruleOf("none-of-them", "greaterThanInclusive", "0.08 mm"),
  ruleOf("most-of-them", "lessThanInclusive", "0.065 mm"),
];
const engine = (bore: unknown, diameter: unknown) => ({
  trialfit: "1",
  name: "Bench four (invented)",
  block: { layout: "inline", cylinders: "4", bore },
  piston: { diameter },
});
const even = (value: string) => ({ value, provenance: "assumed" });
const draws = 2000;
const run = (bore: unknown, diameter: unknown, seed = 1): Promise<Report> =>
  evaluate(readBuild(engine(bore, diameter)), { rules, statistics: { draws, seed } });
const shareOf = (report: Report, id: string) =>
  report.verdicts.find(({ rule }) => rule === id)!.holdsIn!.share;
/** Four standard deviations of a share of so many draws. */
const within = (share: number) => 4 * Math.sqrt((share * (1 - share)) / draws);

describe("engines drawn within the tolerances", () => {
  it("hold as often as the law says: half of them on the middle, all and none beyond the ends", async () => {
    const report = await run("90 mm ± 0.01", "89.94 mm ± 0.005");
    expect(Math.abs(shareOf(report, "half-of-them") - 0.5)).toBeLessThan(within(0.5));
    expect(shareOf(report, "all-of-them")).toBe(1);
    expect(shareOf(report, "none-of-them")).toBe(0);
    const words = report.verdicts.map(({ rule, verdict }) => [rule, verdict]);
    expect(words).toContainEqual(["all-of-them", "holds"]);
    expect(words).toContainEqual(["none-of-them", "fails"]);
  });
  it("spread evenly where the value is assumed", async () => {
    const report = await run(even("90 mm ± 0.01"), "89.94 mm ± 0");
    expect(Math.abs(shareOf(report, "most-of-them") - 0.75)).toBeLessThan(within(0.75));
  });
  it("hold only where every place holds, when places were measured one by one", async () => {
    const readings = { 1: "90 mm", 2: "90 mm", 3: "90 mm", 4: "90 mm" };
    const report = await run({ readings, uncertainty: "0.01 mm" }, "89.94 mm ± 0");
    expect(Math.abs(shareOf(report, "half-of-them") - 0.5 ** 4)).toBeLessThan(within(0.5 ** 4));
  });
  it("scatter as much as the root sum square says, within the worst case", async () => {
    const report = await run("90 mm ± 0.01", "89.94 mm ± 0.005");
    const { sampled, rootSumSquare, low, high, spreadBy } = report.quantities.find(
      ({ id }) => id === "pistonToBoreClearance",
    )!;
    expect(rootSumSquare!.high - rootSumSquare!.centre).toBeCloseTo(Math.hypot(1e-5, 5e-6), 12);
    expect(rootSumSquare!.doubts).toEqual([]);
    expect(spreadBy!.map(({ path, varianceShare }) => [path, varianceShare!.toFixed(3)])).toEqual([
      ["block.bore", "0.800"],
      ["piston.diameter", "0.200"],
    ]);
    // A tolerance is three standard deviations here, cut off there: 0.98658 of them are left (by integration).
    expect(Math.abs(sampled!.deviation / (Math.hypot(1e-5, 5e-6) / 3) / 0.98658 - 1)).toBeLessThan(0.06);
    expect(sampled!.least).toBeGreaterThanOrEqual(low!);
    expect(sampled!.greatest).toBeLessThanOrEqual(high!);
  });
  it("are the same for the same seed, in whatever order the file has its fields", async () => {
    const report = await run("90 mm ± 0.01", "89.94 mm ± 0.005", 7);
    const { block, piston, ...head } = engine("90 mm ± 0.01", "89.94 mm ± 0.005");
    const turned = { piston, block: Object.fromEntries(Object.entries(block).reverse()), ...head };
    const again = await evaluate(readBuild(turned), { rules, statistics: { draws, seed: 7 } });
    expect(again.quantities).toEqual(report.quantities);
    expect(again.verdicts).toEqual(report.verdicts);
    const other = await run("90 mm ± 0.01", "89.94 mm ± 0.005", 8);
    expect(other.quantities[0]!.sampled).not.toEqual(report.quantities[0]!.sampled);
  });
  it("change no verdict and nothing else of the report", async () => {
    const build = readBuild(engine("90 mm ± 0.01", "89.94 mm ± 0.005"));
    const plain = await evaluate(build, { rules });
    const { statistics, ...drawn } = await evaluate(build, { rules, statistics: { draws: 50, seed: 1 } });
    expect(statistics).toMatchObject({ draws: 50, seed: 1 });
    expect(statistics!.about).toContain("never changes one");
    const without = {
      ...drawn,
      verdicts: drawn.verdicts.map(({ holdsIn: _, ...verdict }) => verdict),
      quantities: drawn.quantities.map(({ sampled: _, ...quantity }) => quantity),
    };
    expect(without).toEqual(plain);
  });
  it("say nothing of a rule that lacks an input", async () => {
    const report = await evaluate(
      readBuild({ trialfit: "1", name: "Bare (invented)", block: { bore: "90 mm ± 0.01" } }),
      { rules, statistics: { draws: 20, seed: 1 } },
    );
    expect(report.verdicts.map(({ verdict, holdsIn }) => [verdict, holdsIn])).toEqual(
      rules.map(() => ["unknown", undefined]),
    );
  });
  it("stand in the report in words", async () => {
    const report = await run("90 mm ± 0.01", "89.94 mm ± 0.005");
    const text = renderText(describeReport(report), { width: 400 });
    const share = Math.round(shareOf(report, "half-of-them") * 100);
    expect(text).toContain(`of ${draws} engines drawn within the tolerances, ${share} % hold`);
    expect(text).toContain(`${draws} engines drawn within the tolerances, seed 1: no verdict rests on them`);
    expect(text).toMatch(/Piston-to-bore clearance .* in 95 of 100 drawn engines/);
    expect(text).toMatch(/Piston-to-bore clearance .* by root sum square/);
    expect(text.replace(/\s+/g, " ")).toContain("stands beside the verdicts and never changes one");
  });
  it.each([
    [{ draws: 0, seed: 1 }, /draws/],
    [{ draws: 1.5, seed: 1 }, /draws/],
    [{ draws: 1_000_001, seed: 1 }, /draws/],
    [{ draws: 1, seed: -1 }, /seed/],
    [{ draws: 1, seed: 2 ** 32 }, /seed/],
  ])("are refused for %o", async (statistics, message) => {
    const build = readBuild(engine("90 mm ± 0.01", "89.94 mm ± 0.005"));
    await expect(evaluate(build, { rules, statistics })).rejects.toThrow(message);
  });
});
