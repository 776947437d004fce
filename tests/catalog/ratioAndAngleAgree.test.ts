import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { parseDimension } from "trialfit";
import { describe, expect, it } from "vitest";

type Limit = NonNullable<RuleFile["limits"]>[string];

const rule = (id: string) => ruleFiles.find((file) => file.id === id)!;
/** The limit itself and that of each of its cases, by what the case asks for. */
const values = ({ value, cases = [] }: Limit): ReadonlyMap<string, string> =>
  new Map([["always", value], ...cases.map((one) => [JSON.stringify(one.when), one.value] as const)]);

describe("the least ratio of rod length to stroke and the largest rod angle", () => {
  it("are one limit, seen as a ratio and as an angle", () => {
    const ratios = values(rule("rod-ratio-usual").limits!.least!);
    const angles = values(rule("rod-angle-not-too-steep").limits!.most!);
    expect([...angles.keys()]).toEqual([...ratios.keys()]);
    expect(ratios.size).toBeGreaterThan(1);
    for (const [when, ratio] of ratios) {
      const angle = parseDimension(angles.get(when)!, { unit: "deg" }).nominal;
      const ofRatio = Math.asin(1 / (2 * Number(ratio)));
      // A rod on the ratio's limit must not be sent back by the angle's, nor one well past it be kept.
      expect(angle).toBeGreaterThanOrEqual(ofRatio);
      expect(angle - ofRatio).toBeLessThan((0.05 / 180) * Math.PI);
    }
  });
});
