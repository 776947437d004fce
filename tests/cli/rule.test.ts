import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));
const rules = join(root, "rules");
const troubled = join(root, "packages/core/demo/larkspur-hill.yaml");
const sound = join(root, "packages/core/demo/harrow-eight.yaml");
const clearance = join(rules, "clearances/rod-clears-cylinder-bottom.yaml");
const folder = mkdtempSync(join(tmpdir(), "trialfit-rules-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A copy of a rule, changed, in a catalog of its own with the sources of the real one. */
function changed(from: string | RegExp, to: string): string {
  const path = join(mkdtempSync(join(folder, "catalog-")), "clearances/rod-clears-cylinder-bottom.yaml");
  mkdirSync(join(path, ".."));
  copyFileSync(join(rules, "sources.yaml"), join(path, "../../sources.yaml"));
  const text = readFileSync(clearance, "utf8");
  const other = text.replace(from, to);
  expect(other).not.toBe(text);
  writeFileSync(path, other);
  return path;
}

describe("trialfit rule check", () => {
  it("finds nothing to mend in the catalog, whose examples notice every slip, and counts it", () => {
    const { status, stdout, stderr } = runCommand(["rule", "check", rules, "--no-notes"]);
    expect(stdout).toMatch(/^rules \d+, limits \d+, sources \d+, examples \d+\n/);
    expect(stdout).toMatch(/noticed by the rules' own examples \d+ \(100 %\)/);
    expect(stdout).toMatch(/quantities that rules read or rest on \d+, only shown \d+, neither 0\n/);
    expect(stdout).toContain("stages without a rule: none");
    expect(stdout).toMatch(/Nothing to mend\.\n$/);
    expect([status, stderr]).toEqual([0, ""]);
  });
  it("says what is wrong as file:line:column, and ends 1", () => {
    const path = changed("fact: rodToCylinderClearance", "fact: rodToCylinderClearence");
    const { status, stdout } = runCommand(["rule", "check", path]);
    expect(stdout).toContain(`${path}:8:19: requires.fact: found "rodToCylinderClearence"`);
    expect(stdout).toContain('Did you mean "rodToCylinderClearance"?');
    expect(stdout).toMatch(/To mend: 1\.\n$/);
    expect(status).toBe(1);
  });
  it("names slips that no example notices, and the examples that would", () => {
    const path = changed(/ {2}- name: on the lower limit\n.*\n.*\n/, "");
    const { status, stdout } = runCommand(["rule", "check", path]);
    expect(stdout).toContain("no example that notices the slip: 1.5 mm read as 1.6 mm");
    expect(stdout).toMatch(
      /To be added under examples:.*\n {2}- name: .*\n {4}given: \{ .*1\.5 mm \}\n {4}verdict: holds/,
    );
    expect(status).toBe(1);
    const { add, problems, count } = JSON.parse(
      runCommand(["rule", "check", path, "--format", "json"]).stdout,
    );
    expect(add[path][0]).toMatchObject({ verdict: "holds" });
    expect(problems.length).toBeGreaterThan(0);
    expect(count.mutants.caught).toBeLessThan(count.mutants.made);
    expect(Object.keys(count)).toEqual(["rules", "limits", "sources", "examples", "mutants"]);
  });
  it("looks for slips only once the examples say what the rule says", () => {
    const path = changed(/( {2}- name: on the lower limit\n.*\n {4}verdict: )holds/, "$1fails");
    const { status, stdout } = runCommand(["rule", "check", path]);
    expect(stdout).toMatch(/: found "fails" for "on the lower limit", where the rule says "holds"/);
    expect(stdout).not.toContain("notices the slip");
    expect(stdout).toContain("slips not tried in 1 of the files: mend what stands above first");
    expect(stdout).toMatch(/To mend: 1\.\n$/);
    expect(status).toBe(1);
  });
  it("writes the proposed examples into the file when asked to, and then finds nothing to mend", () => {
    const path = changed(/ {2}- name: on the lower limit\n.*\n.*\n/, "");
    const before = readFileSync(path, "utf8");
    expect(runCommand(["rule", "check", path, "--adopt"]).stdout).toContain("1 written; read them");
    expect(readFileSync(path, "utf8").startsWith(before)).toBe(true);
    expect(runCommand(["rule", "check", path])).toMatchObject({ status: 0 });
  });
  it("takes a source that is listed beside the rule, and refuses one that is not", () => {
    const path = changed("{ id: common-practice }", "{ id: my-handbook }");
    expect(runCommand(["rule", "check", path]).stdout).toContain('found "my-handbook"');
    const list = join(path, "../../sources.yaml");
    writeFileSync(
      list,
      `${readFileSync(list, "utf8")}my-handbook: { title: My own, kind: common-practice }\n`,
    );
    expect(runCommand(["rule", "check", path]).status).toBe(0);
    writeFileSync(list, "my-handbook: { title: My own, kind: hearsay }\n");
    expect(runCommand(["rule", "check", path])).toMatchObject({ status: 2 });
  });
  it("ends 2 where there is nothing to read", () => {
    expect(runCommand(["rule", "check", join(folder, "no-such.yaml")])).toMatchObject({ status: 2 });
    expect(runCommand(["rule", "check", mkdtempSync(join(folder, "empty-"))]).stderr).toContain(
      "no rule file",
    );
    expect(runCommand(["rule", "check", "--note"]).stderr).toContain('did you mean "--notes"?');
    expect(runCommand(["rule", "chekc"]).stderr).toContain('did you mean "check"?');
  });
});

describe("trialfit explain", () => {
  it("explains a rule file that is not in the catalog yet, with the numbers of a build too", () => {
    const path = changed("title: ", "title: New here; ");
    const { status, stdout } = runCommand(["explain", path]);
    expect(stdout).toMatch(/^New here; [\s\S]*requires[\s\S]*Limits/);
    expect(status).toBe(0);
    expect(runCommand(["explain", path, troubled]).stdout).toMatch(/On [\s\S]*fails/);
    const broken = changed("because:", "becuase:");
    expect(runCommand(["explain", broken])).toMatchObject({ status: 2, stdout: "" });
    expect(runCommand(["explain", broken]).stderr).toContain('Did you mean "because"?');
  });
  it("lists the names that a word stands in, or that belong to a part", () => {
    const part = runCommand(["explain", "flywheelFastener"]);
    expect(part).toMatchObject({ status: 0, stderr: "" });
    expect(part.stdout).toMatch(/Rules \(\d+\)[\s\S]*Fields of the build file \(\d+\)/);
    expect(part.stdout).toContain("[flywheelFastener.grip]");
    expect(runCommand(["explain", "valve lift"]).stdout).toMatch(/Quantities \(\d+\)/);
    expect(runCommand(["explain", "valve", sound])).toMatchObject({ status: 2, stdout: "" });
  });
});

describe("trialfit rule new", () => {
  const answers = join(folder, "answers.yaml");
  const target = join(folder, "rules/rods/rod-ratio-new.yaml");
  const make = () => runCommand(["rule", "new", "--answers", answers, "--folder", join(folder, "rules")]);
  it("writes a file that has the form of a rule and says what is left; never over another", () => {
    writeFileSync(
      answers,
      'id: rod-ratio-new\nsystem: rods\nstages: [choose]\nfact: rodRatio\nmust: at least\nlimit: "1.5"\nstanding: from-memory\nwork: order\nweight: note\n',
    );
    const made = make();
    expect(made).toMatchObject({ status: 0, stderr: "" });
    expect(made.stdout).toContain(`Written: ${target}`);
    expect(made.stdout).toContain("because: found a place that is left to you; expected Why it must hold.");
    const text = readFileSync(target, "utf8");
    expect(text).toContain("# The reason, so that a builder recognises it.\nbecause:");
    expect(runCommand(["rule", "check", target]).status).toBe(1);
    writeFileSync(target, `${text}# mine\n`);
    expect(make()).toMatchObject({ status: 2, stdout: "" });
    expect(readFileSync(target, "utf8")).toBe(`${text}# mine\n`);
  });
  it("refuses answers that cannot be taken, and a call without terminal and answers", () => {
    writeFileSync(answers, "id: a-rule\nsystem: rodds\n");
    const { status, stderr } = make();
    expect(stderr).toMatch(/answers\.yaml:2:1: system: found "rodds".*did you mean "rods"/);
    expect(status).toBe(2);
    expect(runCommand(["rule", "new"], "").stderr).toContain("give --answers FILE");
  });
});

describe("trialfit rule try", () => {
  it("gives verdict, numbers, trace and remedy of one rule on a build", () => {
    const { status, stdout } = runCommand(["rule", "try", clearance, troubled]);
    expect(stdout).toMatch(
      /: fails\n[\s\S]*Verdict\n[\s\S]*Trace\n[\s\S]*surely not true[\s\S]*Remedy\n[\s\S]*The clearance is [\d.]+ mm/,
    );
    expect(status).toBe(1);
    expect(runCommand(["rule", "try", clearance, sound]).status).toBe(0);
  });
  it("names what it needs, and the remedy even where the rule holds", () => {
    const bare = runCommand(
      ["rule", "try", clearance, "-"],
      'trialfit: "1"\nname: bare\nconnectingRod: { material: steel }\n',
    );
    expect(bare.stdout).toMatch(
      /: unknown\n[\s\S]*needs[\s\S]*crankshaft\.stroke[\s\S]*cannot be said: a value is missing/,
    );
    expect(runCommand(["rule", "try", clearance, sound]).stdout).toContain("What it would say if it failed");
    const { verdict, remedy } = JSON.parse(
      runCommand(["rule", "try", clearance, sound, "--format", "json"]).stdout,
    );
    expect([verdict.verdict, typeof remedy]).toEqual(["holds", "string"]);
  });
  it("without a build: what it says of every demo build, beside what the catalog says", () => {
    const path = changed(/value: 1\.5 mm\n/, "value: 1.45 mm\n");
    const { status, stdout, stderr } = runCommand(["rule", "try", path]);
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout).toMatch(/larkspur-hill: fails\n.*\n +catalog +as in the catalog\n/);
    const trials = JSON.parse(runCommand(["rule", "try", path, "--format", "json"]).stdout);
    const demos = readdirSync(join(root, "packages/core/demo")).filter((name) => name.endsWith(".yaml"));
    expect(trials.map(({ build }: { build: string }) => `${build}.yaml`)).toEqual(demos.sort());
    const turned = changed("operator: greaterThanInclusive", "operator: lessThan");
    expect(runCommand(["rule", "try", turned]).stdout).toContain("changed: the catalog says fails");
    const fresh = changed("id: rod-clears-cylinder-bottom", "id: rod-clears-cylinder-bottom-too");
    expect(runCommand(["rule", "try", fresh]).stdout).toContain("the catalog has no rule of this id yet");
  });
  it("ends 2 on a rule that cannot be judged", () => {
    const path = changed("fact: rodToCylinderClearance", "fact: rodToCylinderClearence");
    expect(runCommand(["rule", "try", path, sound])).toMatchObject({ status: 2, stdout: "" });
  });
});
