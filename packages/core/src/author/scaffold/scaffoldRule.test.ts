import { validateRuleFile } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import { InputError } from "../../read/Problem.ts";
import { parseSource } from "../../read/parseSource.ts";
import { type Answers, questionKeys, questions, refuseAnswer } from "./questions.ts";
import { readAnswers } from "./readAnswers.ts";
import { scaffoldRule } from "./scaffoldRule.ts";

const least: Answers = {
  id: "something-new",
  system: "pins",
  stages: "choose",
  standing: "common-practice",
  work: "order",
  weight: "caution",
};
const full: Answers = {
  ...least,
  title: "The pin keeps enough wall",
  parts: "piston-pin",
  stages: "choose, machine",
  fact: "pinWallRatio",
  must: "at most",
  limit: "0.7",
  lowest: "0.6",
  highest: "0.75",
  movedBy: "use, boost",
  source: "common-practice",
  do: "Take a pin with a smaller bore than {pistonPin.innerDiameter}.",
  because: "A thin pin is pressed oval and cracks.",
};

describe("a new rule from answers", () => {
  it.each<[string, Answers, number]>([
    ["a quantity", full, 4],
    ["a quantity, strictly", { ...full, must: "more than" }, 4],
    ["a field", { ...full, fact: "block.bore", limit: "80 mm", lowest: "70 mm", highest: "90 mm" }, 4],
    [
      "a field in inches",
      { ...full, fact: "block.bore", limit: "3 1/2 in", lowest: "3 in", highest: "4 in" },
      4,
    ],
    ["a count", { ...full, fact: "block.cylinders", limit: "4", lowest: "2", highest: "12" }, 4],
    ["a word", { ...full, fact: "use", must: "one of", words: "street, drag" }, 7],
  ])("on %s: nothing is left to fill in, and its examples notice every slip", (_, answers, made) => {
    const { path, text, review } = scaffoldRule(answers);
    expect(path).toBe("pins/something-new.yaml");
    expect(review.problems.filter((one) => one.weight === "error")).toEqual([]);
    expect([review.score?.made, review.score?.caught]).toEqual([made, made]);
    expect(text).toContain(
      "# What must hold: comparisons of facts with limits, numbers or words.\nrequires:",
    );
  });
  it("with the least answers has the form of a rule, and is refused until it is filled in", () => {
    const { text, review } = scaffoldRule(least);
    expect(validateRuleFile(parseSource(text, "x").data)).toBe(true);
    const left = review.problems.map((problem) => problem.field);
    expect(left).toEqual([
      "title",
      "parts.0",
      "requires.fact",
      "limits.least.value",
      "limits.least.range.0",
      "limits.least.range.1",
      "limits.least.movedBy.0",
      "otherwise.do",
      "because",
      "examples.0.name",
    ]);
    expect(new Set(review.problems.map((problem) => problem.kind))).toEqual(
      new Set(["to-fill-in", "unknown-part"]),
    );
  });
  it("explains each key in a comment", () => {
    const comments = scaffoldRule(full).text.match(/^ *# .*\.$/gm) ?? [];
    expect(comments.length).toBeGreaterThanOrEqual(15);
  });
  it("is not made without what it cannot do without", () => {
    expect(() => scaffoldRule({ id: "something-new" })).toThrow(RangeError);
  });
});

describe("answers", () => {
  it.each<[keyof Answers & string, string, Answers, RegExp]>([
    ["id", "Not An Id", {}, /small letters/],
    ["id", "", {}, /needed/],
    ["system", "pinns", {}, /did you mean "pins"/],
    ["parts", "piston, pinn", {}, /"pinn" is none of/],
    ["fact", "pinWalRatio", {}, /did you mean "pinWallRatio"/],
    ["fact", "squish", {}, /these have it in their name: .*squishGap/],
    ["must", "one of", { fact: "block.bore" }, /block.bore is a number/],
    ["limit", "80 kg", { fact: "block.bore" }, /measures something else/],
    ["limit", "80", { fact: "block.bore" }, /without a unit/],
    ["words", "street, parade", { fact: "use" }, /"parade" is none of/],
  ])("to %s: %s is refused", (key, answer, before, message) => {
    expect(refuseAnswer(key as keyof typeof questions, answer, before)).toMatch(message);
  });
  it("are read from a file, lists as lists", () => {
    const text =
      "id: a-rule\nsystem: pins\nstages: [choose, run]\nstanding: from-memory\nwork: order\nweight: note\n";
    expect(readAnswers(text, "a.yaml")).toMatchObject({ id: "a-rule", stages: "choose, run" });
  });
  it("from a file: everything that cannot be taken is said at its place", () => {
    const read = () => readAnswers("id: a-rule\nsytem: pins\nfact: block.boor\n", "a.yaml");
    expect(read).toThrow(InputError);
    expect(read).toThrow(/a\.yaml:2:1: sytem: found the unknown key "sytem"\. Did you mean "system"\?/);
    expect(read).toThrow(/a\.yaml:3:1: fact: found "block\.boor".*did you mean "block\.bore"/);
    expect(read).toThrow(/system: found no answer to "system"/);
  });
  it("are asked for every key", () => expect(Object.keys(questions)).toEqual([...questionKeys]));
});
