import { writeFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { excerpt } from "../guides/excerpt.ts";
import { inlineCommands } from "../guides/inlineCommands.ts";
import { pageNames, pagePath, readPage } from "../guides/pages.ts";
import { ranElsewhere } from "../guides/ranElsewhere.ts";
import { runPage } from "../guides/runPage.ts";
import { typeFaults } from "../guides/typeFaults.ts";
import { unknownIn } from "../guides/unknownIn.ts";
import { withOutputs } from "../guides/withOutputs.ts";

/** `TRIALFIT_WRITE_OUTPUTS=1` writes what is printed now into the pages instead of comparing. */
const writing = process.env.TRIALFIT_WRITE_OUTPUTS === "1";

describe("every block of code on a page does what the page says", () => {
  const counts = new Map<string, number>();
  it.concurrent.each(pageNames)(
    "%s",
    async (name) => {
      const page = readPage(name);
      const tried = await runPage(page);
      if (writing) writeFileSync(pagePath(name), withOutputs(page, tried));
      const faults = tried.flatMap(({ block, problems, due }) =>
        writing && due !== undefined ? [] : problems.map((problem) => `${name}:${block.line}: ${problem}`),
      );
      expect(faults.join("\n")).toBe("");
      for (const { how } of tried) counts.set(how, (counts.get(how) ?? 0) + 1);
    },
    900_000,
  );
  afterAll(() => {
    const total = [...counts.values()].reduce((sum, count) => sum + count, 0);
    console.log(`${total} blocks: ${[...counts].map(([how, count]) => `${how} ${count}`).join(", ")}`);
    expect(total).toBeGreaterThan(0);
  });
});

it("every command within a sentence exists, with its options", () => {
  const commands = [...pageNames, "DEVELOPERS.md"].flatMap((name) =>
    inlineCommands(readPage(name)).map((command) => ({ name, command })),
  );
  expect(commands.length).toBeGreaterThan(10);
  const faults = commands.flatMap(({ name, command }) =>
    unknownIn(command).map((what) => `${name}: \`${command}\`: there is no ${what}`),
  );
  expect(faults).toEqual([]);
  expect(unknownIn("npx trialfit check build.yaml --drawn 5")).toEqual(["--drawn"]);
  expect(unknownIn("trialfit chekc build.yaml")).toEqual(["chekc"]);
  expect(unknownIn("npm run nothing")).toEqual(["nothing"]);
});

it("every block of TypeScript has the types that it needs", async () => {
  const { checked, faults } = await typeFaults(pageNames.map((name) => [name, readPage(name)]));
  expect(faults).toBe("");
  expect(checked).toBeGreaterThan(5);
  const slip = '```ts\nimport { evaluate } from "trialfit";\n(await evaluate({})).summry;\n```\n';
  expect((await typeFaults([["slip.md", slip]])).faults).toMatch(/summry/);
});

describe("what the tests of pages would notice", () => {
  const page = (text: string) => runPage(text).then((tried) => tried.flatMap(({ problems }) => problems));
  const build =
    '```yaml title="build.yaml"\ntrialfit: "1"\nname: Four\nblock: { cylinders: "4", bore: 86 mm }\n```\n';
  it.each([
    ["a command that does not exist", "```sh\nnpx trialfit chekc\n```\n", /ended 2/],
    ["a build with a slip", build.replace("86 mm", "86"), /number without a unit/],
    ["a piece of a build with a slip", `${build}\`\`\`yaml\nblock: { bor: 86 mm }\n\`\`\`\n`, /Did you mean/],
    ["code that fails", "```ts\nthrow new Error('no');\n```\n", /ended 1/],
    ["another output", "```ts\nconsole.log(6 * 7);\n```\n```text\n41\n```\n", /but printed is\n42/],
    ["a build shown as wrong that is right", build.replace('.yaml"', '.yaml" wrong'), /nothing is wrong/],
    ["an output of nothing", "```text\n41\n```\n", /without a command/],
    ["a language that nothing runs", "```cobol\nSTOP RUN.\n```\n", /nothing tries/],
  ])("%s", async (_, text, problem) => expect((await page(text)).join("\n")).toMatch(problem));
  it("shows the lines asked for, and where it leaves some out", () => {
    expect(excerpt("a\nb\nc\nd\n", { from: "b", lines: "2" })).toBe("…\nb\nc\n…\n");
    expect(() => excerpt("a\n", { from: "z" })).toThrow(/nothing printed/);
  });
  it.each(ranElsewhere)("$by runs $what", ({ by, proof }) => expect(readPage(by)).toContain(proof));
});
