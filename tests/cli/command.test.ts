import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const demo = (name: string) =>
  fileURLToPath(new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url));
const sound = demo("harrow-eight");
const troubled = demo("larkspur-hill");
const folder = mkdtempSync(join(tmpdir(), "trialfit-"));
afterAll(() => rmSync(folder, { recursive: true }));
const file = (name: string, content: string | Buffer) => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};

describe("trialfit check", () => {
  it("ends 0 on a sound build, 1 on one that must stop, the worst of several", () => {
    expect(runCommand(["check", sound])).toMatchObject({ status: 0, stderr: "" });
    expect(runCommand(["check", troubled])).toMatchObject({ status: 1, stderr: "" });
    expect(runCommand(["check", sound, troubled]).status).toBe(1);
  });
  it("orders the text by what the builder must do", () => {
    const { stdout } = runCommand(["check", troubled]);
    const headings = [
      "NOT SOUND",
      "Stop:",
      "Order (",
      "Machine (",
      "Measure (",
      "Operate within limits (",
      "Holds (",
      "Assumed",
    ];
    const places = headings.map((heading) => stdout.indexOf(heading));
    expect(
      places.every((place) => place >= 0),
      places.join(),
    ).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(stdout).toContain("[rod-clears-cylinder-bottom]");
  });
  it("reads standard input, JSON as well as YAML", () => {
    expect(runCommand(["check"], readFileSync(sound)).status).toBe(0);
    expect(runCommand(["check", "-"], JSON.stringify({ trialfit: 1, name: "bare" })).status).toBe(1);
  });
  it("prints JSON, Markdown, and colour only where it is wanted", () => {
    const report = JSON.parse(runCommand(["check", troubled, "--format", "json"]).stdout);
    expect(report).toMatchObject({ format: "trialfit-report", summary: { sound: false } });
    expect(JSON.parse(runCommand(["check", sound, troubled, "--format=json"]).stdout)).toHaveLength(2);
    expect(runCommand(["check", sound, "--format", "markdown"]).stdout).toMatch(/^# Harrow Eight/);
    const escapeCode = String.fromCharCode(27);
    expect(runCommand(["check", sound], undefined, { FORCE_COLOR: "1" }).stdout).toContain(escapeCode);
    expect(runCommand(["check", sound, "--no-colour"], undefined, { FORCE_COLOR: "1" }).stdout).not.toContain(
      escapeCode,
    );
  });
  it("draws engines where asked, the same for the same seed, and refuses numbers that say nothing", () => {
    const small = file(
      "small.yaml",
      "trialfit: 1\nname: Small (invented)\nblock: { bore: 90 mm ± 0.01 }\npiston: { diameter: 89.94 mm ± 0.005, alloy: 4032 }\n",
    );
    const drawn = (...options: string[]) => {
      const { stdout } = runCommand([
        "explain",
        "pistonToBoreClearance",
        small,
        ...options,
        "--format",
        "json",
      ]);
      return JSON.parse(stdout).worked.sampled;
    };
    const first = drawn("--draw", "50");
    expect(first).toMatchObject({ engines: 50 });
    expect(drawn("--draw", "50", "--seed", "1")).toEqual(first);
    expect(drawn("--draw", "50", "--seed", "2")).not.toEqual(first);
    expect(runCommand(["explain", "pistonToBoreClearance", small, "--draw", "50"]).stdout).toMatch(
      /in 95 of 100 drawn engines/,
    );
    for (const wrong of [
      ["--draw", "0"],
      ["--seed", "1"],
    ])
      expect(runCommand(["check", small, ...wrong])).toMatchObject({ status: 2, stdout: "" });
  });
  it("judges one stage", () => {
    const all = JSON.parse(runCommand(["check", sound, "--format", "json"]).stdout);
    const one = JSON.parse(
      runCommand(["check", sound, "--format", "json", "--stage", "final-assembly"]).stdout,
    );
    expect(one.verdicts.length).toBeGreaterThan(0);
    expect(one.verdicts.length).toBeLessThan(all.verdicts.length);
  });
});

describe("bad input: exit 2, a clear line, no stack trace, no hang", () => {
  const valid = readFileSync(sound, "utf8");
  const broken: readonly [string, () => string, RegExp][] = [
    [
      "misspelled field",
      () => file("a.yaml", valid.replace("stroke: 3.622", "strok: 3.622")),
      /a\.yaml:\d+:\d+: crankshaft\.strok.*Did you mean "stroke"/,
    ],
    [
      "missing unit",
      () => file("b.yaml", valid.replace("3.622 in ± 0.0005", "3.622")),
      /b\.yaml:\d+:\d+: crankshaft\.stroke: found "3\.622".*expected a number with its unit/,
    ],
    [
      "negative bore",
      () => file("c.yaml", valid.replace("bore: 104.000", "bore: -104.000")),
      /block\.bore: found .*outside/,
    ],
    ["NaN", () => file("d.yaml", valid.replace("104.000 mm ± 0.008", "NaN")), /block\.bore: found "NaN"/],
    ["50 MB", () => file("e.yaml", Buffer.alloc(50 * 1024 * 1024, "a")), /found 52428800 bytes/],
    [
      "alias bomb",
      () =>
        file(
          "f.yaml",
          `a: &a [x,x]\n${"bcdefghij"
            .split("")
            .map((name, index) => `${name}: &${name} [${`*${"abcdefghi"[index]},`.repeat(9)}]`)
            .join("\n")}`,
        ),
      /alias/,
    ],
    ["__proto__", () => file("g.yaml", `${valid}\n__proto__: { polluted: yes }\n`), /the key "__proto__"/],
    ["no such file", () => join(folder, "none.yaml"), /no such file/],
    ["a folder", () => folder, /a folder/],
    ["not text", () => file("h.yaml", Buffer.from([0xff, 0xfe, 0x00, 0x80])), /not UTF-8/],
    ["not YAML", () => file("i.yaml", "a: [1, 2"), /i\.yaml:1/],
    ["a list", () => file("j.yaml", "- 1"), /expected/],
  ];
  it.each(broken)("%s", (_, path, message) => {
    const { status, stdout, stderr } = runCommand(["check", path()]);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(stdout).toBe("");
    expect(status).toBe(2);
  });
  it("stops reading an endless standard input", () => {
    const { status, stderr } = runCommand(["check"], Buffer.alloc(50 * 1024 * 1024, "a"));
    expect(stderr).toMatch(/standard input: found more than/);
    expect(status).toBe(2);
  });
  it("gives problems as data when data is asked for", () => {
    const { stdout, status } = runCommand(
      ["check", "--format", "json"],
      "trialfit: 1\nname: x\nblock: { bore: 88 }",
    );
    expect(JSON.parse(stdout)).toMatchObject({
      format: "trialfit-problems",
      problems: [{ line: 3, column: 16, field: "block.bore" }],
    });
    expect(status).toBe(2);
  });
  it.each([
    [["chek", sound], /did you mean "check"/],
    [["check", sound, "--formt", "json"], /did you mean "--format"/],
    [["check", sound, "--format", "pdf"], /format/],
    [["check", sound, "--stage", "later"], /stage/],
    [["explain"], /name/i],
    [["explain", "rod-clears-cylinder-botom"], /did you mean "rod-clears-cylinder-bottom"/],
  ])("refuses %j", (args, message) => {
    const { status, stderr } = runCommand(args);
    expect(stderr).toMatch(message);
    expect(stderr).not.toMatch(/\n\s+at /);
    expect(status).toBe(2);
  });
});

describe("trialfit explain and schema", () => {
  it("explains a rule and a quantity, with and without a build", () => {
    expect(runCommand(["explain", "rod-clears-cylinder-bottom"]).stdout).toMatch(/requires[\s\S]*source/);
    const worked = runCommand(["explain", "compressionRatio", sound]);
    expect(worked.stdout).toMatch(/formula[\s\S]*value/);
    expect(worked.status).toBe(0);
    expect(
      JSON.parse(runCommand(["explain", "compressionRatio", sound, "--format", "json"]).stdout).worked.state,
    ).toBe("value");
  });
  it("prints the schema that is shipped", () => {
    const shipped = readFileSync(
      new URL("../../packages/core/schema/build.schema.json", import.meta.url),
      "utf8",
    );
    expect(JSON.parse(runCommand(["schema"]).stdout)).toEqual(JSON.parse(shipped));
  });
  it("shows help and version", () => {
    expect(runCommand(["--help"]).stdout).toMatch(/check[\s\S]*explain[\s\S]*schema/);
    expect(runCommand(["check", "--help"]).stdout).toMatch(/--format/);
    expect(runCommand(["--version"]).stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
  });
});
