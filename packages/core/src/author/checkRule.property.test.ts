import { fc, test } from "@fast-check/vitest";
import { type RuleFile, sources } from "@trialfit/rules";
import { describe, expect } from "vitest";
import type { ConditionNode, Leaf } from "../judge/CompiledRule.ts";
import { decide } from "../judge/decide.ts";
import { exactly, type Fact } from "../judge/Fact.ts";
import { parseSource } from "../read/parseSource.ts";
import { checkRule } from "./checkRule.ts";
import { canHold } from "./logic/canHold.ts";
import { mutateRule } from "./mutateRule.ts";
import { printRule } from "./printRule.ts";
import { rulePath, ruleText } from "./ruleText.test-support.ts";

const alone = { rules: [], sources };
const file = parseSource(ruleText, rulePath).data as RuleFile;

/** A stretch of the file replaced by another, or by what people type by mistake. */
const slipped = fc
  .tuple(
    fc.nat(ruleText.length),
    fc.nat(40),
    fc.oneof(
      fc.constantFrom(
        "",
        " ",
        "\n",
        "  - ",
        ": ",
        "{",
        "}",
        "[",
        "]",
        '"',
        "'",
        "&a ",
        "*a",
        "# ",
        "- - ",
        "null",
        "~",
        "|\n",
        "\t",
      ),
      fc.tuple(fc.nat(ruleText.length), fc.nat(60)).map(([from, size]) => ruleText.slice(from, from + size)),
    ),
  )
  .map(([from, size, other]) => ruleText.slice(0, from) + other + ruleText.slice(from + size));

describe("any text", () => {
  test.prop([fc.array(slipped, { minLength: 1, maxLength: 1 })], { numRuns: 200 })(
    "is answered with problems at places in it, never with an error",
    ([text]) => {
      const lines = text!.split("\n").length;
      for (const { line, column, file: name } of checkRule(text!, rulePath, alone)) {
        expect(name).toBe(rulePath);
        expect(line).toBeGreaterThanOrEqual(1);
        expect(line).toBeLessThanOrEqual(lines);
        expect(column).toBeGreaterThanOrEqual(1);
      }
    },
  );
  test.prop([fc.string({ maxLength: 200 })])("of any kind is answered", (text) => {
    expect(checkRule(text, rulePath, alone).length).toBeGreaterThan(0);
  });
});

describe("slips", () => {
  const mutants = mutateRule(file);
  test.prop([fc.constantFrom(...mutants)])("have the form of a rule, and differ from the rule", (mutant) => {
    const problems = checkRule(printRule(mutant.file), rulePath, alone);
    expect(
      problems.some(({ kind }) => ["not-yaml", "missing-key", "wrong-type", "unknown-key"].includes(kind)),
    ).toBe(false);
    expect(mutant.file).not.toEqual(file);
  });
});

/** Comparisons over two numbers, one word and one count, each with few values that tell. */
const leaf = fc.oneof(
  fc
    .tuple(
      fc.constantFrom("block.bore", "topRingBackClearance"),
      fc.constantFrom("lessThan", "lessThanInclusive", "greaterThan", "greaterThanInclusive"),
      fc.constantFrom(0.08, 0.09, 0.1),
    )
    .map(
      ([fact, operator, value]) =>
        ({ kind: "leaf", fact, operator, value: { kind: "number", value, text: "" } }) as Leaf,
    ),
  fc
    .tuple(fc.constantFrom("in", "notIn"), fc.subarray(["street", "drag", "marine"], { minLength: 1 }))
    .map(
      ([operator, words]) =>
        ({ kind: "leaf", fact: "use", operator, value: { kind: "words", words } }) as Leaf,
    ),
  fc.tuple(fc.constantFrom("lessThan", "greaterThan"), fc.constantFrom(4, 5)).map(
    ([operator, value]) =>
      ({
        kind: "leaf",
        fact: "block.cylinders",
        operator,
        value: { kind: "number", value, text: "" },
      }) as Leaf,
  ),
);
const { tree } = fc.letrec<{ tree: ConditionNode }>((tie) => ({
  tree: fc.oneof(
    { depthSize: "small" },
    leaf,
    fc.record({
      kind: fc.constantFrom("all" as const, "any" as const),
      children: fc.array(tie("tree"), { minLength: 1, maxLength: 4 }),
    }),
  ),
}));
const numbers = [0.075, 0.08, 0.085, 0.09, 0.095, 0.1, 0.105].map(exactly);
const builds = numbers.flatMap((bore) =>
  numbers.flatMap((clearance) =>
    ["street", "drag", "marine", "circuit"].flatMap((word) =>
      [3, 4, 5, 6].map(
        (cylinders) =>
          new Map<string, Fact>([
            ["block.bore", bore],
            ["topRingBackClearance", clearance],
            ["use", { kind: "word", word }],
            ["block.cylinders", exactly(cylinders)],
          ]),
      ),
    ),
  ),
);

describe("whether a condition can hold", () => {
  test.prop([fc.array(tree, { minLength: 1, maxLength: 3 })], { numRuns: 300 })(
    "is what trying every build that could tell says",
    (conditions) => {
      const tried = builds.some((build) =>
        conditions.every((condition) => decide(condition, (fact) => build.get(fact)!).surely),
      );
      expect(canHold(conditions, [])).toBe(tried);
    },
  );
});
