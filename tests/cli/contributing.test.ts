import { readFileSync } from "node:fs";
import { checkRule, formatProblem, reviewRule } from "trialfit";
import { describe, expect, it } from "vitest";

type Verdicts = Readonly<Record<string, Readonly<Record<string, string>>>>;
const script = new URL("../../.config/compareVerdicts.mjs", import.meta.url).href;
const { compareVerdicts } = (await import(script)) as {
  compareVerdicts: (base: Verdicts, head: Verdicts) => readonly string[];
};

/** The first rule file that a document shows. */
const shown = (document: string) => {
  const text = readFileSync(new URL(`../../${document}`, import.meta.url), "utf8");
  return { text, rule: /```yaml[^\n]*\n([\s\S]*?)```/.exec(text)?.[1] ?? "" };
};
const { text, rule } = shown("CONTRIBUTING.md");
const messages = (/```text\n([\s\S]*?)```/.exec(text)?.[1] ?? "").trim().split("\n");
const name = "gasket-thick-enough.yaml";

it.each([
  ["CONTRIBUTING.md", `rules/head/${name}`],
  ["site/src/content/docs/guides/write-a-rule.mdx", "rules/pistons/cast-piston-below-its-speed.yaml"],
])("the rule that %s shows has nothing to mend, and examples that notice every slip", (document, path) => {
  const { problems, score } = reviewRule(shown(document).rule, path);
  expect(problems.filter((problem) => problem.weight === "error").map(formatProblem)).toEqual([]);
  expect(score?.made).toBeGreaterThan(4);
  expect(score?.caught).toBe(score?.made);
});

describe("the rule that the guide for contributors shows", () => {
  it.each([
    [0, "fact: headGasket.compressedThickness", "fact: headGasket.compressedThicknes"],
    [1, "value: 0.5 mm", 'value: "0.5"'],
    [2, /verdict: fails/, "verdict: holds"],
  ] as const)("message %i is what a slip in it gives", (index, from, to) => {
    const slipped = rule.replace(from, to);
    expect(slipped).not.toBe(rule);
    expect(checkRule(slipped, name).map(formatProblem)).toContain(messages[index]);
  });
});

describe("the verdicts that change between two states of the catalog", () => {
  it("are named with what they were; new and removed rules and builds too", () => {
    const base = { "a.yaml": { same: "holds", turned: "holds", dropped: "open" }, "old.yaml": {} };
    const head = { "a.yaml": { same: "holds", turned: "fails", added: "unknown" }, "new.yaml": {} };
    expect(compareVerdicts(base, head)).toEqual([
      "a.yaml: added: unknown, was not there",
      "a.yaml: dropped: gone, was open",
      "a.yaml: turned: fails, was holds",
      "new.yaml: a new build",
      "old.yaml: no longer there",
    ]);
    expect(compareVerdicts(base, base)).toEqual([]);
  });
});
