import { ruleFiles } from "@trialfit/rules";
import { expect, it } from "vitest";
import { readRule } from "../../judge/compileRule.ts";
import { limitsDiffer } from "./limitsDiffer.ts";

const file = ruleFiles.find(({ id }) => id === "rod-clears-cylinder-bottom")!;
const use = (...words: string[]) => ({ fact: "use", operator: "in" as const, value: words });

/** The limit of a rule with these cases: the value by the use. */
function limit(...cases: readonly (readonly [string, ...string[]])[]) {
  const least = {
    ...file.limits!.least!,
    cases: cases.map(([value, ...words]) => ({ when: use(...words), value })),
  };
  return readRule({ ...file, limits: { least } }).rule.limits[0]!;
}

it.each([
  [
    "cases that exclude each other, in any order",
    [
      ["1.3 mm", "drag"],
      ["1.2 mm", "circuit"],
    ],
    [
      ["1.2 mm", "circuit"],
      ["1.3 mm", "drag"],
    ],
    false,
  ],
  [
    "cases that share a word, by their order",
    [
      ["1.3 mm", "drag", "circuit"],
      ["1.2 mm", "circuit"],
    ],
    [
      ["1.2 mm", "circuit"],
      ["1.3 mm", "drag", "circuit"],
    ],
    true,
  ],
  [
    "a word that an earlier case has taken",
    [
      ["1.3 mm", "drag"],
      ["1.2 mm", "circuit"],
    ],
    [
      ["1.3 mm", "drag"],
      ["1.2 mm", "circuit", "drag"],
    ],
    false,
  ],
  ["a word that none has taken", [["1.3 mm", "drag"]], [["1.3 mm", "drag", "street"]], true],
  ["a word whose value is the same without it", [["1.5 mm", "drag"]], [["1.5 mm", "drag", "street"]], false],
] as const)("%s", (_, one, other, differ) => {
  expect(limitsDiffer(limit(...one), limit(...other), undefined)).toBe(differ);
});

it("looks at builds that the rule concerns only", () => {
  const { when } = readRule({ ...file, when: use("drag", "circuit") }).rule;
  const [one, other] = [limit(["1.3 mm", "drag"]), limit(["1.3 mm", "drag", "street"])];
  expect(limitsDiffer(one, other, when)).toBe(false);
  expect(limitsDiffer(one, limit(["1.3 mm", "drag", "circuit"]), when)).toBe(true);
});
