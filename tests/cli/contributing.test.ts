import { checkRule, formatProblem } from "trialfit";
import { describe, expect, it } from "vitest";
import { fencedBlocks } from "../../site/src/data/fencedBlocks.ts";
import { readPage } from "../guides/pages.ts";

type Verdicts = Readonly<Record<string, Readonly<Record<string, string>>>>;
const script = new URL("../../.config/compareVerdicts.mjs", import.meta.url).href;
const { compareVerdicts } = (await import(script)) as {
  compareVerdicts: (base: Verdicts, head: Verdicts) => readonly string[];
};

const blocks = fencedBlocks(readPage("CONTRIBUTING.md"));
const first = (language: string) => blocks.find((block) => block.language === language)!.text;
const rule = first("yaml");
const messages = first("text").trim().split("\n");
const name = "gasket-thick-enough.yaml";

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
