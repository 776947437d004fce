import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
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
