import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "trialfit-packed-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The machine's own Node, as a user of the packages has it: not the one of this repository's tools. */
const PATH = (process.env.PATH ?? "")
  .split(delimiter)
  .filter((entry) => !entry.includes("node_modules"))
  .join(delimiter);
const environment = Object.fromEntries(
  Object.entries({ ...process.env, PATH }).filter(
    ([name]) => !name.toLowerCase().startsWith("npm_") && name !== "NODE",
  ),
);
const run = (command: string, args: readonly string[], cwd = folder) =>
  spawnSync(command, args, { cwd, env: environment, encoding: "utf8", timeout: 600_000 });

describe("the packed packages, installed into an empty project", () => {
  beforeAll(() => {
    for (const name of ["packages/mechanics", "rules", "packages/core", "packages/cli"]) {
      execFileSync("npm", ["pack", "--silent", "--pack-destination", folder], {
        cwd: join(root, name),
        env: environment,
      });
    }
    writeFileSync(
      join(folder, "package.json"),
      JSON.stringify({ name: "empty", private: true, type: "module" }),
    );
    const tarballs = readdirSync(folder).filter((name) => name.endsWith(".tgz"));
    expect(tarballs).toHaveLength(4);
    const { status, stderr } = run("npm", [
      "install",
      "--no-audit",
      "--no-fund",
      "--prefer-offline",
      "--loglevel=error",
      ...tarballs.map((name) => `./${name}`),
    ]);
    expect(stderr).not.toMatch(/ERR/);
    expect(status).toBe(0);
  }, 900_000);

  it("passes the checks of package form and types", () => {
    for (const tarball of readdirSync(folder).filter((name) => name.endsWith(".tgz"))) {
      const lint = spawnSync("npx", ["--no-install", "publint", "--strict", join(folder, tarball)], {
        cwd: root,
        encoding: "utf8",
      });
      expect(lint.status, `${lint.stdout}${lint.stderr}`).toBe(0);
      if (tarball.includes("cli")) continue;
      const types = spawnSync(
        "npx",
        ["--no-install", "attw", "--profile", "esm-only", join(folder, tarball)],
        { cwd: root, encoding: "utf8" },
      );
      expect(types.status, `${types.stdout}${types.stderr}`).toBe(0);
    }
  }, 900_000);
  it("brings a command that evaluates the demo build", () => {
    const { status, stdout } = run("npx", [
      "--no-install",
      "trialfit",
      "check",
      "node_modules/trialfit/demo/larkspur-hill.yaml",
    ]);
    expect(stdout).toMatch(/rod-clears-cylinder-bottom/);
    expect(status).toBe(1);
    expect(
      run("npx", ["--no-install", "trialfit", "check", "node_modules/trialfit/demo/harrow-eight.yaml"])
        .status,
    ).toBe(0);
  });
  it("evaluates from code, with code generation forbidden", () => {
    writeFileSync(
      join(folder, "use.mjs"),
      'import { readFileSync } from "node:fs";\nimport { evaluate, readBuildText } from "trialfit";\n' +
        'const report = await evaluate(readBuildText(readFileSync("node_modules/trialfit/demo/harrow-eight.yaml", "utf8")));\n' +
        "console.log(process.versions.node, report.summary.sound, report.verdicts.length);\n",
    );
    const { status, stdout, stderr } = run("node", ["--disallow-code-generation-from-strings", "use.mjs"]);
    expect(stderr).toBe("");
    expect(stdout).toMatch(/^\d+\.\d+\.\d+ true \d\d+\n$/);
    expect(status).toBe(0);
  });
  it("ships the schemas, and no sources or tests", () => {
    const files = readdirSync(join(folder, "node_modules/trialfit"), { recursive: true, encoding: "utf8" });
    expect(files).toContain(join("schema", "build.schema.json"));
    expect(files.filter((name) => /\.test\.|test-support|^src/.test(name))).toEqual([]);
    expect(files.length).toBeGreaterThan(50);
  });
});
