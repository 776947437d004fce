import { ruleFiles } from "@trialfit/rules";
import { compileRules } from "trialfit";
import { describe, expect, it } from "vitest";
import { GradualJudge } from "../../packages/core/src/compile/GradualJudge.ts";
import { generator } from "./generator.ts";
import { cheapRules, demoPair as demos, partLists } from "./partLists.ts";

const cheap = cheapRules(compileRules(ruleFiles));

describe("what cannot be judged is refused, and what is the same is known to be", () => {
  const input = partLists(demos, cheap, ["piston", "oil"], 2, generator(9));

  it("levels and options that are not there", () => {
    const judge = new GradualJudge(input);
    expect(() => judge.choose(1, 0)).toThrow("found level 1; expected 0 to 0");
    expect(() => judge.choose(0, 2)).toThrow("found option 2 of piston; expected 0 to 1");
    judge.choose(0, 1);
    expect(() => judge.failureAt(-1)).toThrow("found level -1; expected 0, the last that is chosen");
  });

  it("a field that parts of two kinds give", () => {
    const [piston] = input.kinds;
    const twice = { ...input, kinds: [piston!, { ...piston!, name: "another" }] };
    expect(() => new GradualJudge(twice)).toThrow(
      /in parts of the kinds piston and another; expected it in one/,
    );
  });

  it("parts that no rule can tell apart", () => {
    const [piston, oil] = input.kinds;
    const [first, second] = piston!.options;
    const noted = new Map([...first!.values, ["piston.alloyName", { kind: "text", value: "x" }]] as never);
    const judge = new GradualJudge({
      ...input,
      kinds: [{ ...piston!, options: [first!, second!, { values: noted as never }] }, oil!],
    });
    expect(judge.sameAs(0)).toEqual([0, 1, 0]);
  });
});
