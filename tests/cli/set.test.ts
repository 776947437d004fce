import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ruleFiles } from "@trialfit/rules";
import { applySet, printRule, readSetText } from "trialfit";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const demo = (name: string) => fileURLToPath(new URL(`../../packages/core/demo/${name}`, import.meta.url));
const troubled = demo("larkspur-hill.yaml");
const shown = demo("sets/our-shop.yaml");
const folder = mkdtempSync(join(tmpdir(), "trialfit-set-"));
afterAll(() => rmSync(folder, { recursive: true }));

const clearance = ruleFiles.find(({ id }) => id === "rod-clears-cylinder-bottom")!;
const own = {
  ...clearance,
  id: "rod-clears-cylinder-bottom-widely",
  title: "The rod clears the bottom of the cylinder as our shop wants it",
  examples: clearance.examples.filter(({ name }) => name !== "on the lower limit"),
};
const head = `id: our-shop
title: Our shop
about: What we do differently from the catalog, and why.
extends: circuit
limits:
  - { rule: rod-within-rated-speed, limit: most, value: "0.92", because: Two bolts broke at 0.95., by: J. B. }
  - { rule: mean-piston-speed, limit: most, value: 60 m/s, because: We only make one pass with it., by: A. M. }
silence:
  - { rule: rod-clears-cylinder-bottom, because: Ours is wider., by: J. B. }
`;
const indented = (text: string) => text.trimEnd().replace(/^/gm, "    ").replace(/^ {4}/, "  - ");
const file = (name: string, text: string) => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const shop = file("shop.yaml", `${head}rules:\n${indented(printRule(own))}\n`);
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("trialfit check --set with a shop's own file", () => {
  const plain = JSON.parse(runCommand(["check", troubled, "--format", "json"]).stdout);
  const { status, stdout, stderr } = runCommand(["check", troubled, "--set", shop]);
  const text = flat(stdout);
  it("says with which set it judged, and how many ways it departs", () => {
    expect([status, stderr]).toEqual([1, ""]);
    expect(text).toContain(
      'set: Our shop [our-shop]; judged for the use circuit; 2 limits of its own; 1 rule of its own; 1 rule silenced: see "Departures"',
    );
    expect(text).toContain("Departures of the set from the whole catalog (5)");
  });
  it.each([
    ["the use", "judged for the use circuit, whatever the build states"],
    ["the rule of its own", `a rule of its own: ${own.title} [${own.id}]`],
    [
      "a limit with what it was, the reason and who answers",
      "→ 0.92 because Two bolts broke at 0.95. (J. B.)",
    ],
    [
      "a limit outside what the trade knows",
      "→ 60 m/s beware outside the range that the catalog knows in the trade because We only make one pass with it. (A. M.)",
    ],
    [
      "the silenced rule with what it would say, the reason and who answers",
      `silenced: ${clearance.title} [${clearance.id}] would say fails; weight: stop because Ours is wider. (J. B.)`,
    ],
  ])("prints %s", (_, words) => {
    expect(text).toContain(words);
  });
  it("counts the rule of its own and not the silenced one", () => {
    const report = JSON.parse(runCommand(["check", troubled, "--set", shop, "--format", "json"]).stdout);
    const verdictOf = (rule: string) =>
      report.verdicts.find((one: { rule: string }) => one.rule === rule)?.verdict;
    expect(verdictOf(own.id)).toBe("fails");
    expect(verdictOf(clearance.id)).toBeUndefined();
    expect(report.set.silenced).toMatchObject([{ rule: clearance.id, verdict: "fails" }]);
    expect(report.verdicts).toHaveLength(plain.verdicts.length);
    expect(report.set.departures.map(({ kind }: { kind: string }) => kind)).toEqual([
      "use",
      "rule",
      "limit",
      "limit",
      "silence",
    ]);
  });
  it("prints the departures in Markdown too", () => {
    const markdown = flat(runCommand(["check", troubled, "--set", shop, "--format", "markdown"]).stdout);
    expect(markdown).toContain("Departures of the set from the whole catalog (5)");
    expect(markdown).toContain("Two bolts broke at 0.95. (J. B.)");
  });
  it("refuses a set that cannot be, at its line", () => {
    const broken = file("broken.yaml", head.replace("mean-piston-speed", "mean-piston-sped"));
    const refused = runCommand(["check", troubled, "--set", broken]);
    expect(refused).toMatchObject({ status: 2, stdout: "" });
    expect(refused.stderr).toMatch(/broken\.yaml:7:\d+: limits\.1\.rule: .*Did you mean "mean-piston-speed"/);
  });
});

describe("trialfit rule check with a set", () => {
  it("scores the rules of its own like those of the catalog", () => {
    const { status, stdout } = runCommand(["rule", "check", shop]);
    expect(stdout).toContain(`${shop}: rule ${own.id}: `);
    expect(stdout).toContain("no example that notices the slip: 1.5 mm read as 1.6 mm");
    expect(stdout).toMatch(/rules 1, limits 1, .*\nslips tried \d+, noticed/);
    expect(status).toBe(1);
    expect(runCommand(["rule", "check", shop, "--adopt"])).toMatchObject({ status: 2 });
  });
  it("has nothing to say of a set without any", () => {
    const { status, stdout } = runCommand(["rule", "check", file("plain.yaml", head)]);
    expect(stdout).toMatch(/rules 0, [\s\S]*Nothing to mend\.\n$/);
    expect(status).toBe(0);
  });
  it("finds nothing to mend in the set that the site shows, whose own rule notices every slip", () => {
    const { status, stdout } = runCommand(["rule", "check", shown]);
    expect(stdout).toMatch(
      /rules 1, [\s\S]*noticed by the rules' own examples \d+ \(100 %\)\nNothing to mend/,
    );
    expect(status).toBe(0);
    const kinds = applySet([readSetText(readFileSync(shown, "utf8"), shown)]).departures.map(
      ({ kind }) => kind,
    );
    expect(kinds).toEqual(["use", "rule", "limit", "silence"]);
  });
});
