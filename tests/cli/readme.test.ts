import { readFileSync } from "node:fs";
import { applySet, evaluate, readBuildText, readSetText } from "trialfit";
import { expect, it } from "vitest";

const root = new URL("../../", import.meta.url);
const documents = ["README.md", "site/src/content/docs/guides/first-check.mdx"];

it.each(documents)("every build file shown in %s can be read and evaluated", async (name) => {
  const text = readFileSync(new URL(name, root), "utf8");
  const blocks = [...text.matchAll(/```ya?ml[^\n]*\n([\s\S]*?)```/g)]
    .map((match) => match[1]!)
    .filter((block) => block.includes("trialfit:"));
  expect(blocks.length).toBeGreaterThan(0);
  for (const block of blocks) {
    const report = await evaluate(readBuildText(block, name));
    expect(report.summary.unknown).toBeGreaterThan(0);
    expect(report.summary.holds + report.summary.fails + report.summary.open).toBeGreaterThan(0);
  }
});

it("the set shown in README.md can be read and applied", () => {
  const text = readFileSync(new URL("README.md", root), "utf8");
  const blocks = [...text.matchAll(/```yaml\n([\s\S]*?)```/g)].map((match) => match[1]!);
  const sets = blocks.filter((block) => block.includes("silence:"));
  expect(sets).toHaveLength(1);
  const { departures } = applySet([readSetText(sets[0]!, "README.md")]);
  expect(departures.map(({ kind }) => kind)).toEqual(["use", "limit", "silence"]);
});
