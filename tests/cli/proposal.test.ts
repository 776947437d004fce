import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSource } from "trialfit";
import { afterAll, describe, expect, it } from "vitest";

interface Step {
  readonly name?: string;
  readonly if?: string;
  readonly run?: string;
  readonly env?: { readonly COMMAND?: string };
}
interface Matcher {
  readonly severity: string;
  readonly pattern: readonly [{ readonly regexp: string }];
}

const root = fileURLToPath(new URL("../..", import.meta.url));
const read = (path: string) => readFileSync(join(root, path), "utf8");
const workflow = parseSource(read(".github/workflows/rules.yml"), "rules.yml").data;
const { steps } = (workflow as { jobs: { rules: { steps: readonly Step[] } } }).jobs.rules;
const matchers: readonly Matcher[] = JSON.parse(read(".github/rule-problems.json")).problemMatcher;
const step = (name: string) => steps.find((one) => one.name === name)!;
const rule = "rules/clearances/rod-clears-cylinder-bottom.yaml";
const folder = mkdtempSync(join(tmpdir(), "trialfit-proposal-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the step that checks, as the host of the code would, in a catalog of one changed rule. */
function check(from: string | RegExp, to: string) {
  const clone = mkdtempSync(join(folder, "clone-"));
  mkdirSync(join(clone, "rules/clearances"), { recursive: true });
  cpSync(join(root, "rules/sources.yaml"), join(clone, "rules/sources.yaml"));
  const text = read(rule);
  expect(text.replace(from, to) === text).toBe(from === to);
  writeFileSync(join(clone, rule), text.replace(from, to));
  const summary = join(clone, "summary.md");
  const { status, stdout, stderr } = spawnSync(
    "bash",
    ["-eo", "pipefail", "-c", step("Check every rule").run!],
    {
      cwd: clone,
      encoding: "utf8",
      env: {
        ...process.env,
        CI: "",
        COMMAND: join(root, "packages/cli/bin/trialfit.js"),
        GITHUB_STEP_SUMMARY: summary,
      },
    },
  );
  const noticed = stdout.split("\n").flatMap((line) =>
    matchers.flatMap(({ severity, pattern: [{ regexp }] }) => {
      const match = new RegExp(regexp).exec(line);
      return match === null ? [] : [{ severity, file: match[1], line: Number(match[2]), message: match[4] }];
    }),
  );
  return { status, stderr, noticed, summary: readFileSync(summary, "utf8") };
}

describe("the checks of a proposal", () => {
  it.each([
    ["a misspelled key", "because:", "becuase:", 'Did you mean "because"?'],
    ["a missing key", /stages: .*\n/, "", 'found no "stages"'],
    ["a file that is not YAML", "title: ", "title: [", "not YAML"],
  ])("say what is wrong in %s, at its line and in the summary", (_, from, to, message) => {
    const { status, stderr, noticed, summary } = check(from, to);
    expect([status, stderr]).toEqual([1, ""]);
    const told = noticed.find((one) => one.message!.includes(message));
    expect(told).toMatchObject({ severity: "error", file: rule });
    expect(told!.line).toBeGreaterThan(0);
    expect(summary).toMatch(/^## What the checks say\n\n~~~~text\n[\s\S]+\n~~~~\n$/);
    expect(summary).toContain(message);
  });
  it("pass where nothing is wrong", () => {
    const { status, noticed, summary } = check("because:", "because:");
    expect([status, noticed]).toEqual([0, []]);
    expect(summary).toContain("Nothing to mend.");
  });
  it("are run whether or not the proposal can be built, from what was built without it where it cannot", () => {
    for (const name of ["Check every rule", "Pages of the changed rules"]) {
      const { if: when, env } = step(name);
      expect(when).toContain("!cancelled()");
      expect(env?.COMMAND).toContain("steps.head.outcome == 'success' && '.' || '../base'");
    }
    expect(step("The proposal can be built")).toMatchObject({ run: "exit 1" });
  });
});
