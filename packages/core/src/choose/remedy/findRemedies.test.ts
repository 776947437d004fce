import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { beforeAll, describe, expect, it } from "vitest";
import { evaluate } from "../../evaluate.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { withField } from "../../read/withField.ts";
import { renderText } from "../../report/renderText.ts";
import { describeRemedies } from "./describeRemedies.ts";
import { findRemedies } from "./findRemedies.ts";
import type { RemedyReport } from "./Remedy.ts";

const larkspur = readBuildText(
  readFileSync(new URL("../../../demo/larkspur-hill.yaml", import.meta.url), "utf8"),
);
const remediesFor = async (only: readonly string[], build = larkspur, stage?: "final-assembly") =>
  findRemedies(build, { only, ...(stage === undefined ? {} : { stage }) });

describe("findRemedies", () => {
  let found: RemedyReport;
  beforeAll(async () => {
    found = await remediesFor([
      "pin-end-float",
      "mean-piston-speed",
      "piston-to-bore-suits-alloy",
      "main-bearing-clearance",
      "journal-overlap",
      "main-clearance-measured-finely",
      "overspeed-above-limiter",
    ]);
  });
  const of = (rules: readonly string[]) => found.findings.filter(({ rule }) => rules.includes(rule));
  it("ranks the changes by kind of work, then by steps, and writes them as a build file does", async () => {
    const findings = of(["pin-end-float", "mean-piston-speed", "piston-to-bore-suits-alloy"]);
    expect(findings.map(({ rule, state }) => [rule, state])).toEqual([
      ["piston-to-bore-suits-alloy", "achievable"],
      ["mean-piston-speed", "achievable"],
      ["pin-end-float", "achievable"],
    ]);
    const [fit, speed, float] = findings;
    expect(fit!.remedies.map(({ work, path, text }) => [work, path, text])).toEqual([
      ["machine", "block.bore", "86.510 mm ± 0.008"],
      ["part", "piston.diameter", "86.400 mm ± 0.005"],
    ]);
    expect(fit!.remedies[0]).toMatchObject({
      oneStepLess: { verdict: "open", breaks: [] },
      steps: 2,
      unit: "mm",
    });
    expect(speed!.remedies).toMatchObject([
      { work: "limit", path: "targets.speed", text: "7950 rpm", settles: ["ring-height-suits-acceleration"] },
    ]);
    // The stroke would do, and with it the piston no longer comes up to the deck.
    expect(speed!.others).toMatchObject([
      {
        path: "crankshaft.stroke",
        why: "breaks",
        breaks: expect.arrayContaining([{ rule: "squish-gap-not-too-open", weight: "caution" }]),
      },
    ]);
    expect(float!.remedies.map(({ steps }) => steps)).toEqual([1, 1, 1]);
    expect(float!.settlement).toMatchObject({
      becomes: "holds",
      measure: [{ path: "piston.retainerThickness" }],
    });
  });
  it("says why nothing does, and what nobody can choose", async () => {
    const findings = of(["main-bearing-clearance", "journal-overlap", "main-clearance-measured-finely"]);
    const by = new Map(findings.map((one) => [one.rule, one]));
    expect(findings.every(({ state, remedies }) => state === "unachievable" && remedies.length === 0)).toBe(
      true,
    );
    expect(by.get("main-bearing-clearance")!.others.map(({ why }) => why)).toEqual([
      "too-loose",
      "too-loose",
      // Boring the housing out is the wrong way, and another block nobody takes.
      "out-of-reach",
    ]);
    expect(by.get("journal-overlap")!.others.map(({ why }) => why)).toEqual(["breaks", "breaks", "breaks"]);
    expect(by.get("main-clearance-measured-finely")).toMatchObject({
      others: [],
      fixed: ["mainBearing.clearanceUncertainty", "mainBearing.clearanceWindow"],
    });
    const text = renderText(
      describeRemedies({
        format: "trialfit-remedies",
        formatVersion: 1,
        build: "b",
        findings,
        contradictions: [],
        unsettled: 0,
        asked: [],
      }),
    );
    expect(text).toMatch(/unachievable by one dimension alone: what would do breaks another rule/);
    expect(text).toMatch(/tolerances are\s+wider than the room/);
    expect(text).toMatch(/no dimension that can be\s+changed\s+reaches it/);
  });
  it("moves what was measured at each cylinder by the same, and every cylinder then holds", async () => {
    const readings = { "1": "86.500 mm", "2": "86.502 mm", "3": "86.498 mm", "4": "86.503 mm" };
    const build = withField(larkspur, "block.bore", { readings, uncertainty: "0.002 mm" });
    // Few rules: each is judged at every cylinder.
    const rules = ruleFiles.filter(({ id }) => /^(piston-to-bore|gasket-bore|top-ring-gap)/.test(id));
    expect(rules.length).toBeGreaterThan(3);
    const report = await findRemedies(build, { rules });
    expect(renderText(describeRemedies(report))).toMatch(/more\s+at each place where it\s+was measured/);
    const bored = report.findings
      .find(({ rule }) => rule === "piston-to-bore-suits-alloy")!
      .remedies.find(({ path }) => path === "block.bore")!;
    expect(bored).toMatchObject({ work: "machine" });
    expect(bored.text).toBeUndefined();
    const moved = Object.fromEntries(
      Object.entries(readings).map(([at, text]) => [
        at,
        `${(Number.parseFloat(text) + 1000 * (bored.to - bored.from)).toFixed(4)} mm`,
      ]),
    );
    const after = withField(build, "block.bore", { readings: moved, uncertainty: "0.002 mm" });
    const { verdicts } = await evaluate(after, { rules });
    expect(verdicts.find(({ rule }) => rule === "piston-to-bore-suits-alloy")).toMatchObject({
      verdict: "holds",
      places: { length: 4 },
    });
  });
  it("asks for a measurement, not for a change, where a rule holds on paper", async () => {
    const { findings } = await remediesFor(["camshaft-end-play"], larkspur, "final-assembly");
    expect(findings).toMatchObject([
      { state: "measure", verdict: "open", remedies: [], others: [], unmeasured: ["camshaft.endPlay"] },
    ]);
    const report = {
      format: "trialfit-remedies",
      formatVersion: 1,
      build: "b",
      findings,
      contradictions: [],
      unsettled: 0,
      asked: [],
    } as const;
    expect(renderText(describeRemedies(report))).toMatch(
      /none: it holds on paper and waits for a measurement/,
    );
  });
  it("has nothing to do where a rule holds, and refuses one that there is not", async () => {
    expect(found.asked).toEqual([{ rule: "overspeed-above-limiter", verdict: "holds" }]);
    await expect(remediesFor(["pin-end-flote"])).rejects.toThrow(/did you mean "pin-end-float"/);
  });
  it("stops when it is told to", async () => {
    const signal = { aborted: true, reason: new Error("no longer wanted") };
    await expect(findRemedies(larkspur, { only: ["oil-pump-keeps-up"], signal })).rejects.toThrow(
      /no longer wanted/,
    );
  });
});
