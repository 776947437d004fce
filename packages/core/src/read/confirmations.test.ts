import { describe, expect, it } from "vitest";
import { InputError, type Problem } from "./Problem.ts";
import { readBuildText } from "./readBuild.ts";

const read = (body: string) => readBuildText(`trialfit: "1"\nname: Test\nconfirmations:\n${body}`, "b.yaml");
const refused = (body: string): readonly Problem[] => {
  try {
    read(body);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error("nothing was refused");
};
const entry = (change: Readonly<Record<string, string>> = {}) => {
  const words = { seen: "yes", by: "J. B.", on: "2026-03-14", how: "by eye, lamp", ...change };
  const inside = Object.entries(words).flatMap(([key, text]) => (text === "" ? [] : [`${key}: ${text}`]));
  return `  even-caps: { ${inside.join(", ").replace("by eye, lamp", '"by eye, lamp"')} }`;
};

describe("confirmations of a build file", () => {
  it("are kept word for word, and stand as a fact for the rule that asks", () => {
    const build = read(entry());
    expect(build.confirmations.get("even-caps")).toEqual({
      seen: "yes",
      by: "J. B.",
      on: "2026-03-14",
      how: "by eye, lamp",
    });
    expect(build.values.get("confirmations.even-caps")).toMatchObject({ value: "yes" });
  });
  it.each<[string, string, Partial<Problem>]>([
    ["another word than yes or no", entry({ seen: "perhaps" }), { field: "confirmations.even-caps.seen" }],
    ["nobody who looked", entry({ by: "" }), { field: "confirmations.even-caps.by" }],
    ["a name of blanks", entry({ by: '"  "' }), { field: "confirmations.even-caps.by" }],
    ["no day", entry({ on: "" }), { field: "confirmations.even-caps.on" }],
    ["a day written another way", entry({ on: "14.3.2026" }), { field: "confirmations.even-caps.on" }],
    ["a day that does not exist", entry({ on: "2026-02-30" }), { field: "confirmations.even-caps.on" }],
    ["no word of how", entry({ how: "" }), { field: "confirmations.even-caps.how" }],
    ["a misspelled word", entry({ sean: "yes" }), { didYouMean: "seen" }],
    ["an id that no rule can have", entry().replace("even-caps", "Even caps"), { line: 4 }],
    ["a bare yes", "  even-caps: yes", { field: "confirmations.even-caps" }],
  ])("refuses %s", (_, body, expected) => {
    const problem = refused(body)[0]!;
    expect(problem).toMatchObject({ line: 4, ...expected });
    expect(problem.expected).not.toBe("");
  });
});
