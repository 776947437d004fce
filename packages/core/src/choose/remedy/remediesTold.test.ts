import { ruleFiles } from "@trialfit/rules";
import { beforeAll, describe, expect, it } from "vitest";
import { evaluate } from "../../evaluate.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { withField } from "../../read/withField.ts";
import { renderText } from "../../report/renderText.ts";
import { describeRemedies } from "./describeRemedies.ts";
import { findRemedies } from "./findRemedies.ts";
import type { RemedyReport } from "./Remedy.ts";

/** An invented build with much that does not hold. */
const file = `trialfit: "1"
name: A build in trouble
use: circuit
targets: { power: 180 kW at crank, speed: 7600 rpm, overspeed: 7900 rpm, compressionRatio: "11" }
block: { layout: inline, cylinders: "4", bore: 84.0 mm ± 0.01, deckHeight: 215.00 mm ± 0.05 }
crankshaft: { stroke: 94 mm ± 0.05 }
connectingRod: { length: 138 mm ± 0.02, material: steel, ratedSpeed: 7500 rpm }
piston: { compressionHeight: 31 mm ± 0.03, crownVolume: 2 cm3 dish ± 0.2, topLandHeight: 6 mm, topLandDiameter: 83.4 mm }
headGasket: { bore: 83.5 mm, compressedThickness: 0.8 mm ± 0.03 }
cylinderHead: { chamberVolume: 40 cm3 ± 0.3 }
`;
const ids = [
  "rod-within-rated-speed",
  "overspeed-above-limiter",
  "crown-volume-meets-ratio",
  "squish-gap-not-closed",
  "squish-gap-not-too-open",
  "deck-clearance-not-too-large",
  "gasket-not-too-thick",
  "gasket-bore-clears-cylinder",
  "rod-ratio-usual",
];
const rules = ruleFiles.filter(({ id }) => ids.includes(id));
const build = readBuildText(file);

describe("what is told of remedies in a build with much that does not hold", () => {
  let found: RemedyReport;
  beforeAll(async () => {
    found = await findRemedies(build, { rules });
  });
  const of = (rule: string) => found.findings.find((one) => one.rule === rule)!;
  it("tells what a change makes worse that fails already, ranks it behind clean ones, and names contradictions", () => {
    const { remedies } = of("rod-within-rated-speed");
    expect(remedies).toMatchObject([
      { path: "connectingRod.ratedSpeed", text: "7900 rpm", worsens: [], contradicts: [] },
      {
        path: "targets.overspeed",
        text: "7500 rpm",
        worsens: [{ rule: "overspeed-above-limiter", weight: "caution", verdict: "fails" }],
        contradicts: ["overspeed-above-limiter"],
      },
    ]);
    // 7900/7600 lacks 0.0105 of 1.05, 7500/7600 lacks 0.063.
    expect(remedies[1]!.worsens[0]!.by).toBeGreaterThan(4);
    expect(of("overspeed-above-limiter").remedies.map(({ path }) => path)).toEqual([
      "targets.speed",
      "targets.overspeed",
    ]);
    expect(found.contradictions).toEqual([
      {
        path: "targets.overspeed",
        label: "Targets: overspeed",
        larger: ["overspeed-above-limiter"],
        smaller: ["rod-within-rated-speed"],
      },
    ]);
    const text = renderText(describeRemedies(found)).replace(/\s+/g, " ");
    expect(text).toContain("makes worse [overspeed-above-limiter] to");
    expect(text).toContain("[overspeed-above-limiter] wants it the other way");
    expect(text).toContain("Contradiction: Targets: overspeed");
  });
  it("says that tolerances are too wide, at which size, and how closely all would do", async () => {
    const { state, others } = of("crown-volume-meets-ratio");
    expect(state).toBe("unachievable");
    const crown = others.find(({ path }) => path === "piston.crownVolume")!;
    expect(crown).toMatchObject({
      why: "too-loose",
      nearest: { text: "12.8 cm3 dish ± 0.2" },
      closer: { share: 0.3 },
      needs: ["induction.kind"],
    });
    const { verdicts } = await evaluate(withField(build, crown.path, crown.nearest!.text), { rules });
    expect(verdicts.find(({ rule }) => rule === "crown-volume-meets-ratio")).toMatchObject({
      verdict: "unknown",
      nominally: true,
    });
    expect(renderText(describeRemedies(found)).replace(/\s+/g, " ")).toMatch(
      /12.8 cm3 dish.*holds at the nominal values only.*at 30 % of what they are; then needs Induction: induction kind/,
    );
    const known = await findRemedies(withField(build, "induction.kind", "naturally-aspirated"), {
      rules,
      only: ["crown-volume-meets-ratio"],
    });
    const there = known.findings[0]!.others.find(({ path }) => path === "piston.crownVolume")!;
    expect(there).toMatchObject({ why: "too-loose", closer: { share: 0.3 } });
    expect(there.needs).toBeUndefined();
  });
  it("offers what breaks only lighter rules where nothing is clean, and says what it brings into question", async () => {
    const { state, remedies, compromises } = of("squish-gap-not-closed");
    expect([state, remedies]).toEqual(["compromise", []]);
    expect(compromises[0]).toMatchObject({ work: "shim", path: "headGasket.compressedThickness" });
    for (const { brings } of compromises) {
      expect(brings.length).toBeGreaterThan(0);
      expect(brings.every(({ weight }) => weight !== "stop")).toBe(true);
    }
    const { path, text, brings } = compromises[0]!;
    const { verdicts } = await evaluate(withField(build, path, text), { rules });
    const words = new Map(verdicts.map(({ rule, verdict }) => [rule, verdict]));
    expect(words.get("squish-gap-not-closed")).toBe("holds");
    for (const { rule, becomes } of brings) expect(words.get(rule)).toBe(becomes);
    expect(renderText(describeRemedies(found)).replace(/\s+/g, " ")).toMatch(
      /none is clean.*brings into question: \[gasket-not-too-thick\]/,
    );
  });
});
