import type { Condition, RuleFile } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { finish } from "../derive/Steps.ts";
import { readBuild } from "../read/readBuild.ts";
import { compareRuleFixture } from "./compareRuleFixture.test-support.ts";
import { compileRule } from "./compileRule.ts";
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
  it("is nothing on the limit itself", async () => {
    const settlement = await settle(
      { block: { bore: "90 mm ± 0.05" }, piston: { diameter: "89.94 mm ± 0" } },
      { fact: "pistonToBoreClearance", operator: "greaterThanInclusive", value: "0.06 mm" },
    );
    expect(settlement).toBeUndefined();
  });
});
