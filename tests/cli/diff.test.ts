import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const old = fileURLToPath(new URL("../../packages/core/demo/larkspur-hill.yaml", import.meta.url));
const text = readFileSync(old, "utf8");
const folder = mkdtempSync(join(tmpdir(), "trialfit-diff-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** The demo build with one stretch of its text replaced. */
function changed(name: string, from: RegExp, to: string): string {
  expect(text).toMatch(from);
  const path = join(folder, name);
  writeFileSync(path, text.replace(from, to));
  return path;
}

describe("trialfit diff", () => {
  it("ends 0 where nothing changed, a comment apart", { timeout: 600_000 }, () => {
    const same = changed("same.yaml", /^/, "# another layout\n");
    const { status, stdout, stderr } = runCommand(["diff", old, same]);
    expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
    expect(stdout).toContain("Nothing changed.");
  });
  it("ends 1 with what changed and why", { timeout: 600_000 }, () => {
    const railed = changed("rail.yaml", /supportRail: no/, "supportRail: yes");
    const { status, stdout } = runCommand(["diff", old, railed]);
    expect(status).toBe(1);
    expect(stdout).toContain("[pin-bore-clears-oil-groove]");
    expect(stdout).toMatch(/verdict +fails → holds/);
    expect(stdout.indexOf("Verdicts that changed")).toBeLessThan(stdout.indexOf("Values that changed"));
    const data = JSON.parse(runCommand(["diff", old, railed, "--format", "json"]).stdout);
    expect(data).toMatchObject({
      format: "trialfit-change",
      values: [{ path: "piston.supportRail", before: "no", after: "yes", aspects: ["value"] }],
    });
  });
  it("reads one side from standard input, and refuses what it cannot read or use", {
    timeout: 600_000,
  }, () => {
    expect(runCommand(["diff", "-", old], text)).toMatchObject({ status: 0 });
    expect(runCommand(["diff", old])).toMatchObject({ status: 2, stdout: "" });
    expect(runCommand(["diff", old, join(folder, "none.yaml")])).toMatchObject({ status: 2, stdout: "" });
    const bad = changed("bad.yaml", /stroke:/, "strok:");
    const { status, stderr } = runCommand(["diff", old, bad]);
    expect(status).toBe(2);
    expect(stderr).toContain('Did you mean "stroke"?');
  });
});
