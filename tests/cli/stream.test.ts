import { spawnSync } from "node:child_process";
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { briefOf, evaluate, parseSource, readBuild } from "trialfit";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";
import { streamBuilds } from "./streamBuilds.ts";

const folder = mkdtempSync(join(tmpdir(), "trialfit-stream-"));
afterAll(() => rmSync(folder, { recursive: true }));

const file = (name: string, lines: Iterable<string>) => {
  const path = join(folder, name);
  writeFileSync(path, [...lines].join("\n"));
  return path;
};
const rows = (text: string) =>
  text
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line));
const demo = (name: string) => {
  const path = new URL(`../../packages/core/demo/${name}.yaml`, import.meta.url);
  return parseSource(readFileSync(path, "utf8"), name).data;
};

describe("trialfit check --stream", () => {
  it("does not end well where there was nothing to judge", () => {
    for (const input of ["", "\n\n"]) {
      const { status, stdout, stderr } = runCommand(["check", "--stream"], input);
      expect([status, stdout]).toEqual([2, ""]);
      expect(stderr).toContain("no line in it; expected builds");
    }
  });
  it("prints a report in a line for each build, with its number, in their order", () => {
    const { status, stdout, stderr } = runCommand(
      ["check", "--stream", "--brief"],
      [...streamBuilds(20)].join("\n"),
    );
    expect(stderr).toBe("");
    expect(status).toBe(1);
    expect(rows(stdout).map(({ line, name }) => [line, name])).toEqual(
      Array.from({ length: 20 }, (_, index) => [index + 1, `number ${index + 1}`]),
    );
  });

  it("skips lines that are no builds, says which and what is wrong, and passes blank ones by", () => {
    const lines = ["", ...streamBuilds(3, 2), "{", "[]", `"${"x".repeat(600_000)}"`, "  "];
    const path = file("bad.jsonl", lines);
    const { status, stdout, stderr } = runCommand(["check", "--stream", "--brief", path]);
    expect(status).toBe(2);
    expect(rows(stdout).map(({ line }) => line)).toEqual([2, 4]);
    const said = stderr.trimEnd().split("\n");
    expect(said).toHaveLength(5);
    expect(said[0]).toBe(
      `${path}:3: block.bore: found "86": a number without a unit; expected a number with its unit (m, mm, cm, um, in, thou, ft).`,
    );
    expect(said[1]).toBe(`${path}:5: found a line that is not JSON; expected one build as a JSON object.`);
    expect(said[2]).toContain(`${path}:6:`);
    expect(said[3]).toBe(`${path}:7: found 600002 bytes; expected a line of at most 524288 bytes.`);
    expect(said[4]).toBe("4 lines skipped: no build was read from them.");
  });

  it("refuses bytes that are no text", () => {
    const { status, stderr } = runCommand(["check", "--stream"], Buffer.from([0x7b, 0xff, 0xfe, 0x0a]));
    expect(status).toBe(2);
    expect(stderr).toContain(
      "standard input:1: found bytes that are not UTF-8 text; expected JSON in UTF-8.",
    );
  });

  it("counts the lines of a piece as those of the whole", () => {
    const piece = ["{", ...streamBuilds(1)].join("\n");
    const { stdout, stderr } = runCommand(
      ["check", "--stream", "--brief", "--first-line", "101"],
      Buffer.from(piece),
    );
    expect(stderr).toContain("standard input:101: found a line that is not JSON");
    expect(rows(stdout).map(({ line }) => line)).toEqual([102]);
  });

  it("says the same whatever the number of workers", () => {
    const path = file("workers.jsonl", streamBuilds(40, 7));
    const [one, ...more] = ["1", "2", "3"].map((workers) =>
      runCommand(["check", "--stream", "--brief", "--workers", workers, path]),
    );
    expect(rows(one!.stdout)).toHaveLength(35);
    for (const other of more) expect(other).toEqual(one);
  });

  it("in brief says what the whole report says, and the whole report is that of evaluate", async () => {
    const builds = [demo("larkspur-hill"), JSON.parse([...streamBuilds(1)][0]!)];
    const path = file(
      "demo.jsonl",
      builds.map((build) => JSON.stringify(build)),
    );
    const brief = rows(runCommand(["check", "--stream", "--brief", path]).stdout);
    const whole = rows(runCommand(["check", "--stream", path]).stdout);
    expect([brief.length, whole.length]).toEqual([2, 2]);
    for (const [index, data] of builds.entries()) {
      const report = await evaluate(readBuild(data, `${path}:${index + 1}`));
      expect(whole[index]).toEqual({ line: index + 1, report: JSON.parse(JSON.stringify(report)) });
      expect(brief[index]).toEqual({ line: index + 1, name: report.build.name, ...briefOf(report) });
    }
  });

  it("takes a stage and a set, in brief too", async () => {
    const line = [...streamBuilds(1)][0]!;
    const args = ["check", "--stream", "--brief", "--stage", "choose", "--set", "street"];
    const [said] = rows(runCommand(args, line).stdout);
    const report = await evaluate(readBuild(JSON.parse(line)), { stage: "choose", sets: ["street"] });
    expect(said).toEqual({ line: 1, name: "number 1", ...briefOf(report) });
  });

  it.each([
    [["check", "--workers", "2", "x.yaml"], "--workers goes with --stream"],
    [["check", "--first-line", "2", "x.yaml"], "--first-line goes with --stream"],
    [["check", "--stream", "--first-line", "0", "x"], "--first-line 0: expected a whole number, at least 1"],
    [
      ["check", "--stream", "--workers", "0", "x"],
      '--workers: found "0"; expected a whole number from 1 to 64',
    ],
    [["check", "--stream", "a", "b"], "--stream reads one file"],
    [["check", "--stream", "no-such.jsonl"], "no-such.jsonl: found no such file"],
  ])("refuses %j", (args, message) => {
    const { status, stderr } = runCommand(args);
    expect(status).toBe(2);
    expect(stderr).toContain(message);
  });
});

describe("under GNU parallel", () => {
  const script = fileURLToPath(new URL("parallel.sh", import.meta.url));
  const bin = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));
  const hasParallel = spawnSync("parallel", ["--version"]).status === 0;

  it.skipIf(!hasParallel)("says what one process says (skipped where there is no GNU parallel)", () => {
    const path = file("parallel.jsonl", streamBuilds(120));
    const command = join(folder, "trialfit");
    writeFileSync(command, `#!/bin/sh\nexec ${process.execPath} ${bin} "$@"\n`);
    chmodSync(command, 0o755);
    const { stdout, status } = spawnSync("sh", [script, path, "2"], {
      encoding: "utf8",
      env: { ...process.env, TRIALFIT: command },
      maxBuffer: 64 * 1024 * 1024,
    });
    const alone = rows(runCommand(["check", "--stream", "--brief", path]).stdout);
    expect(rows(stdout)).toEqual(alone);
    expect(alone).toHaveLength(120);
    // Its exit code is the number of processes that ended with another than 0: three of 50, 50 and 20 lines.
    expect(status).toBe(3);
  });

  it("says a clear word where there is none", () => {
    const { status, stderr } = spawnSync("/bin/sh", [script, "x"], {
      encoding: "utf8",
      env: { PATH: "/nowhere" },
    });
    expect(status).toBe(77);
    expect(stderr).toContain("skipped: there is no GNU parallel here");
  });
});
