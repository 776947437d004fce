import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const folder = mkdtempSync(join(tmpdir(), "trialfit-papers-"));
afterAll(() => rmSync(folder, { recursive: true }));

const build = join(folder, "four.yaml");
writeFileSync(
  build,
  `trialfit: "1"
name: Four, invented
use: street
block: { layout: inline, cylinders: "4", mainBearings: "5", bore: 86.500 mm ± 0.010 }
crankshaft: { stroke: 90 mm ± 0.02 }
`,
);
const date = ["--date", "2026-03-14"];
const read = (name: string) => readFileSync(join(folder, name), "utf8");

describe("trialfit papers", () => {
  it("writes what is asked for, and ends 1 where a paper is held", { timeout: 300_000 }, () => {
    const out = join(folder, "out");
    const { status, stdout, stderr } = runCommand([
      "papers",
      build,
      "--out",
      out,
      ...date,
      "--as",
      "html,markdown,csv,json",
    ]);
    expect({ status, stderr }).toEqual({ status: 1, stderr: "" });
    const names = readdirSync(out);
    expect(names).toEqual(
      expect.arrayContaining([
        "papers.html",
        "trial-sheet.csv",
        "trial-sheet.md",
        "engine-record.json",
        "order-list.md",
      ]),
    );
    for (const name of names) expect(stdout).toContain(join(out, name));
    expect(stdout).toContain("Held: Assembly sequence.");
    expect(read("out/papers.html")).toContain("2026-03-14");
  });

  it("lets pass what a person names, and prints the name", { timeout: 300_000 }, () => {
    const out = join(folder, "passed");
    const { status } = runCommand([
      "papers",
      build,
      "--out",
      out,
      ...date,
      "--as",
      "markdown",
      "--only",
      "assembly-sequence",
      "--pass",
      "assembly-sequence: J. B.: a trial",
    ]);
    expect(status).toBe(0);
    expect(read("passed/assembly-sequence.md")).toContain("Let pass by J. B.:");
  });

  it.each([
    [["--only", "torque-sheets"], /did you mean torque-sheet\?/],
    [["--as", "docx"], /there are html, markdown, csv, json, pdf/],
    [["--pass", "torque-sheet"], /"paper: NAME: reason"/],
    [["--date", "yesterday"], /not a day/],
    [["--unit", "inch"], /did you mean "--units"/],
  ])("refuses %j", (more, message) => {
    const { status, stderr } = runCommand(["papers", build, "--out", join(folder, "none"), ...more]);
    expect(status).toBe(2);
    expect(stderr).toMatch(message);
  });
});

describe("trialfit readings", () => {
  const sheet = join(folder, "filled.csv");
  const head = "entry,position,height,direction,unit,reading,by";

  it("takes a filled sheet into the build file", () => {
    writeFileSync(
      sheet,
      `${head}\nblock.bore,1,top,along,mm,86.503,B. K.\nblock.bore,1,top,across,mm,86.507,B. K.\n`,
    );
    const { status, stderr } = runCommand([
      "readings",
      build,
      sheet,
      "--write",
      join(folder, "measured.yaml"),
    ]);
    expect({ status, stderr }).toEqual({
      status: 0,
      stderr: "2 readings taken, 0 known before, 0 refused\n",
    });
    expect(read("measured.yaml")).toContain("86.507 mm");
    expect(runCommand(["readings", join(folder, "measured.yaml"), sheet]).stderr).toContain("2 known before");
  });

  it("refuses a slip with its line and the prediction, and ends 1", () => {
    writeFileSync(sheet, `${head}\nblock.bore,1,top,along,mm,865.03,B. K.\n`);
    const { status, stderr, stdout } = runCommand(["readings", build, sheet]);
    expect(status).toBe(1);
    expect(stderr).toMatch(/filled\.csv:2:1: reading: found 865\.03 mm, ten times the prediction/);
    expect(stdout).toContain("86.500 mm ± 0.010");
  });
});
