import { type RuleFile, ruleFiles } from "@trialfit/rules";
import { compileRules } from "trialfit";
import { describe, expect, it } from "vitest";
import { countVerdicts, unseenWords } from "./countVerdicts.ts";
import { generateBuildFile } from "./generateBuilds.ts";
import { DRAWN, seenBuilds } from "./seenBuilds.ts";

/** Builds until a rule is called unseen: another rule reshuffles what is drawn, and a rare case may come later. */
const MOST = 4 * DRAWN;

/** What each rule was not seen to say that it must be seen to say. */
function unseen(files: readonly RuleFile[], drawn = MOST): readonly string[] {
  const rules = compileRules(files);
  const counts = countVerdicts(rules, seenBuilds(drawn), true);
  return rules.flatMap((rule) => {
    const { id } = rule.file;
    const words = unseenWords(rule, counts.get(id)!);
    return words.length === 0 ? [] : [`${id}: never ${words.join(", never ")}`];
  });
}

describe("over the demo builds and the builds drawn from them", () => {
  it("every rule is seen to hold, to fail, and to stay out where it has a when", { timeout: 600_000 }, () => {
    expect(unseen(ruleFiles)).toEqual([]);
  });
  it("a rule that cannot fail, hold or stay out is told", () => {
    const { limits: _, ...file } = ruleFiles.find(({ id }) => id === "mean-piston-speed")!;
    const asks = (operator: "lessThan" | "greaterThan", value: string) => ({
      fact: "meanPistonSpeed",
      operator,
      value,
    });
    const rule = (id: string, change: Partial<RuleFile>): RuleFile => ({
      ...file,
      id,
      otherwise: { ...file.otherwise, do: "Turn it more slowly." },
      ...change,
    });
    const told = unseen(
      [
        rule("never-fails", { requires: asks("greaterThan", "0 m/s") }),
        rule("never-holds", { requires: asks("lessThan", "0 m/s") }),
        rule("always-asks", { when: asks("greaterThan", "0 m/s"), requires: asks("lessThan", "22 m/s") }),
      ],
      100,
    );
    expect(told).toEqual([
      "always-asks: never not-applicable",
      "never-fails: never fails",
      "never-holds: never holds",
    ]);
  });
  it("the same seed draws the same build, another number another", () => {
    expect(generateBuildFile(1, 5)).toEqual(generateBuildFile(1, 5));
    expect(generateBuildFile(1, 6)).not.toEqual(generateBuildFile(1, 5));
    expect(generateBuildFile(2, 5)).not.toEqual(generateBuildFile(1, 5));
  });
});
