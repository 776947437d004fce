import { readFileSync } from "node:fs";
import { type Condition, type RuleFile, ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { finish } from "../derive/Steps.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import type { DimensionValue } from "../read/FieldValue.ts";
import { readBuild, readBuildText } from "../read/readBuild.ts";
import { compareRuleFixture } from "./compareRuleFixture.test-support.ts";
import { compileRule } from "./compileRule.ts";
import { compileRules } from "./compileRules.ts";
import { howToSettle } from "./howToSettle.ts";
import { judgeBuild } from "./judgeBuild.ts";

const settle = async (parts: object, requires: Condition, more: Partial<RuleFile> = {}) => {
  const rule = compileRule({ ...compareRuleFixture, requires, ...more });
  const { values } = readBuild({ trialfit: "1", name: "Bench (invented)", ...parts });
  const { judged } = await judgeBuild(values, [rule], quantities, []);
  expect(judged[0]!.verdict.verdict).toBe("open");
  return finish(howToSettle(judged[0]!, quantities));
};
const mm = (si: number) => si * 1000;

describe("what settles an open verdict", () => {
  it("is a dimension whose ends leave the quantity where it is, when it turns round between them", async () => {
    // The rod leans by asin((r + |e|)/l). At e = 0.5 mm it holds, and at both ends; in between it does not.
    const angle = (offset: number) => (Math.asin((47 + offset) / 144.5) * 180) / Math.PI;
    const settlement = await settle(
      {
        block: { cylinderAxisOffset: "0 mm ± 0" },
        crankshaft: { stroke: "94 mm ± 0" },
        connectingRod: { length: "144.5 mm ± 0" },
        piston: { pinOffset: "0.5 mm towards thrust side ± 1" },
      },
      { fact: "largestRodAngle", operator: "greaterThanInclusive", value: `${angle(0.25)} deg` },
    );
    expect(settlement).toMatchObject({ becomes: "holds", measure: [{ path: "piston.pinOffset" }] });
    const { uncertainty } = settlement!.measure[0]!;
    expect(mm(uncertainty)).toBeLessThanOrEqual(0.25);
    expect(mm(uncertainty)).toBeGreaterThan(0.22);
  });
  it("is a dimension that decides whether the rule applies at all", async () => {
    const settlement = await settle(
      { block: { bore: "89.98 mm ± 0.05" }, piston: { diameter: "89.94 mm ± 0" } },
      { fact: "pistonToBoreClearance", operator: "greaterThanInclusive", value: "0.2 mm" },
      { when: { fact: "block.bore", operator: "greaterThan", value: "90 mm" } },
    );
    expect(settlement).toMatchObject({ becomes: "not-applicable", measure: [{ path: "block.bore" }] });
    expect(mm(settlement!.measure[0]!.uncertainty)).toBeLessThanOrEqual(0.02);
    expect(mm(settlement!.measure[0]!.uncertainty)).toBeGreaterThan(0.018);
  });
  it("is, on the limit itself, what comes out clear of it on either side", async () => {
    const requires: Condition = {
      fact: "pistonToBoreClearance",
      operator: "greaterThanInclusive",
      value: "0.06 mm",
    };
    const piston = { diameter: "89.94 mm ± 0" };
    const settlement = await settle({ block: { bore: "90 mm ± 0.05" }, piston }, requires);
    expect(settlement).toMatchObject({ provided: "clear-of-limit", measure: [{ path: "block.bore" }] });
    const width = mm(settlement!.measure[0]!.uncertainty);
    expect(width).toBeCloseTo(0.015, 9);
    const found = async (bore: number) => {
      const { values } = readBuild({
        trialfit: "1",
        name: "Bench (invented)",
        block: { bore: { value: `${bore} mm`, uncertainty: `${width} mm` } },
        piston,
      });
      const { judged } = await judgeBuild(
        values,
        [compileRule({ ...compareRuleFixture, requires })],
        quantities,
        [],
      );
      return judged[0]!.verdict.verdict;
    };
    expect(await found(90)).toBe("open");
    expect(await found(90 + 1.01 * width)).toBe("holds");
    expect(await found(90 - 1.01 * width)).toBe("fails");
  });
});

describe.each(["harrow-eight", "larkspur-hill"])("of the open verdicts of %s", (name) => {
  it("every one is settled by what is named, measured as well as is said", async () => {
    const text = readFileSync(new URL(`../../demo/${name}.yaml`, import.meta.url), "utf8");
    const values = withDefaults(readBuildText(text, name));
    const { judged } = await judgeBuild(values, compileRules(ruleFiles), quantities, []);
    const open = judged.filter(({ verdict }) => verdict.verdict === "open");
    const counts = { settled: 0, onLimit: 0, stillOpen: 0 };
    for (const one of open) {
      const settlement = finish(howToSettle(one, quantities));
      expect(settlement, one.rule.file.id).toBeDefined();
      const { measure, becomes, provided } = settlement!;
      expect(measure.length, one.rule.file.id).toBeGreaterThan(0);
      if (provided === "clear-of-limit") {
        counts.onLimit += 1;
        continue;
      }
      const measured = async (times: number) => {
        const closer = new Map(values);
        for (const { path, uncertainty } of measure) {
          const value = values.get(path) as DimensionValue;
          const { nominal } = value;
          expect(uncertainty, path).toBeLessThan((value.high - value.low) / 2);
          closer.set(path, {
            ...value,
            low: nominal - times * uncertainty,
            high: nominal + times * uncertainty,
          });
        }
        const again = await judgeBuild(closer, [one.rule], quantities, []);
        return again.judged[0]!.verdict.verdict;
      };
      expect(await measured(1), one.rule.file.id).toBe(becomes);
      counts.settled += 1;
      if ((await measured(4)) === "open") counts.stillOpen += 1;
    }
    expect(counts.settled + counts.onLimit).toBe(open.length);
    expect(counts.settled).toBeGreaterThan(0);
    expect(counts.stillOpen).toBeGreaterThan(0.7 * counts.settled);
    console.log(`${name}: ${JSON.stringify(counts)}`);
  }, 120_000);
});
