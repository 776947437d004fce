import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { RemedyReport } from "trialfit";
import { editBuildText } from "trialfit";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const larkspur = fileURLToPath(new URL("../../packages/core/demo/larkspur-hill.yaml", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "trialfit-remedy-"));
afterAll(() => rmSync(folder, { recursive: true }));

const timeout = { timeout: 600_000 };

describe("trialfit remedy", () => {
  it("ends 1 with what makes the findings hold, and 0 where they do", timeout, () => {
    const { status, stdout, stderr } = runCommand([
      "remedy",
      larkspur,
      "--rule",
      "pin-end-float,journal-overlap",
    ]);
    expect({ status, stderr }).toEqual({ status: 1, stderr: "" });
    expect(stdout).toMatch(/2 findings: 1 can be made to hold by one change, 1 cannot/);
    expect(stdout).toMatch(/part +Piston pin: pin length \[pistonPin.length\]: 56.35 mm ± 0.05/);
    expect(stdout).toMatch(/unachievable by one dimension alone/);
    const path = join(folder, "shorter-pin.yaml");
    const edits = [{ path: "pistonPin.length", value: "56.35 mm ± 0.05" }];
    writeFileSync(path, editBuildText(readFileSync(larkspur, "utf8"), edits));
    const after = runCommand(["remedy", path, "--rule", "pin-end-float"]);
    expect(after).toMatchObject({ status: 0, stdout: expect.stringContaining("[pin-end-float]: holds") });
  });
  it(
    "writes the change that is taken, keeps the rest of the file, and tells what changes by it",
    timeout,
    () => {
      const path = join(folder, "taken.yaml");
      const base = ["remedy", larkspur, "--rule", "mean-piston-speed", "--write", path];
      const { status, stdout, stderr } = runCommand(base);
      expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
      expect(stdout).toMatch(/verdict +fails → holds/);
      // Blanks, and a comma at the end, may come out otherwise.
      const lines = (file: string) =>
        readFileSync(file, "utf8")
          .split("\n")
          .map((line) => line.trim().replace(/ +/g, " ").replace(/,$/, ""));
      const [old, fresh] = [lines(larkspur), lines(path)];
      expect(fresh).toHaveLength(old.length);
      expect(fresh.filter((line, index) => line !== old[index])).toEqual(["speed: 7950 rpm"]);
      const data = runCommand([...base, "--take", "targets.speed", "--format", "json"]);
      expect(JSON.parse(data.stdout)).toMatchObject({
        format: "trialfit-remedies",
        taken: { path: "targets.speed", text: "7950 rpm" },
        change: {
          format: "trialfit-change",
          verdicts: expect.arrayContaining([
            expect.objectContaining({ rule: "mean-piston-speed", after: "holds" }),
          ]),
        },
      });
    },
  );
  it("ends 2 where it is not said which remedy is to be written, or there is none such", timeout, () => {
    const path = join(folder, "none.yaml");
    const said = (...more: readonly string[]) => runCommand(["remedy", larkspur, ...more]);
    for (const [more, message] of [
      [["--write", path], /one finding: name its rule/],
      [["--rule", "pin-end-float,mean-piston-speed", "--write", path], /one finding/],
      [["--rule", "pin-end-float", "--take", "pistonPin.length"], /--take needs --write/],
      [["--rule", "journal-overlap", "--write", path], /no change of one dimension/],
      [["--rule", "pin-end-float", "--write", path, "--take", "block.bore"], /offered: .*pistonPin.length/],
    ] as const) {
      const { status, stderr } = said(...more);
      expect({ more, status }).toEqual({ more, status: 2 });
      expect(stderr).toMatch(message);
    }
    expect(existsSync(path)).toBe(false);
  });
  it("gives the same as data", timeout, () => {
    const { stdout } = runCommand(
      ["remedy", "-", "--rule", "mean-piston-speed", "--format", "json"],
      readFileSync(larkspur),
    );
    const data = JSON.parse(stdout) as RemedyReport;
    expect(data).toMatchObject({
      format: "trialfit-remedies",
      formatVersion: 1,
      findings: [
        {
          rule: "mean-piston-speed",
          state: "achievable",
          remedies: [{ path: "targets.speed", text: "7950 rpm" }],
        },
      ],
    });
  });
  it("ends 2 for a rule that there is not, and names the nearest", timeout, () => {
    const { status, stderr } = runCommand(["remedy", larkspur, "--rule", "pin-end-flote"]);
    expect(status).toBe(2);
    expect(stderr).toMatch(/no rule that is judged has this id; did you mean "pin-end-float"\?/);
  });
});
