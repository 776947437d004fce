import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "trialfit-lint-"));
afterAll(() => rmSync(folder, { recursive: true }));

const forbidden: readonly [where: string, imported: string][] = [
  ["packages/mechanics/src/volumes", "trialfit"],
  ["packages/mechanics/src/volumes", "@trialfit/rules"],
  ["packages/mechanics/src/volumes", "node:fs"],
  ["packages/core/src/units", "../read/readBuild.ts"],
  ["packages/core/src/read", "../derive/deriveAll.ts"],
  ["packages/core/src/derive", "../judge/judgeAll.ts"],
  ["packages/core/src/derive/quantities/rods", "json-rules-engine"],
  ["packages/core/src/trace", "../judge/judgeAll.ts"],
  ["packages/core/src/judge", "../report/makeReport.ts"],
  ["packages/core/src/compile", "../report/makeReport.ts"],
  ["packages/core/src/compile", "json-rules-engine"],
  ["packages/core/src/report", "json-rules-engine"],
  ["packages/core/src/judge", "../author/checkRule.ts"],
  ["packages/core/src/author", "json-rules-engine"],
  ["packages/core/src/author", "../report/makeReport.ts"],
  ["packages/core/src", "json-rules-engine"],
  ["packages/core/src/report", "@trialfit/cli"],
  ["packages/core/src/read", "node:fs"],
  ["packages/cli/src", "@trialfit/mechanics"],
];
const allowed: readonly [where: string, imported: string][] = [
  ["packages/core/src/judge", "json-rules-engine"],
  ["packages/core/src/judge", "../read/fieldCatalog.ts"],
  ["packages/core/src/derive", "@trialfit/mechanics"],
  ["packages/core/src/trace", "../derive/Chain.ts"],
  ["packages/cli/src", "trialfit"],
];

/** The rule's findings by file, from one run of the linter with the project's own settings. */
function findings(): ReadonlySet<string> {
  copyFileSync(join(root, "biome.json"), join(folder, "biome.json"));
  for (const [index, [where, imported]] of [...forbidden, ...allowed].entries()) {
    const path = join(folder, where, `fixture${index}.ts`);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, `import { x } from "${imported}";\nconsole.log(x);\n`);
  }
  const binary = join(root, "node_modules/.bin/biome");
  const { stdout, stderr } = spawnSync(
    binary,
    ["lint", "--vcs-enabled=false", "--max-diagnostics=none", "."],
    { cwd: folder, encoding: "utf8" },
  );
  const places = `${stdout}${stderr}`.matchAll(/(fixture\d+)\.ts:\d+:\d+ lint\/style\/noRestrictedImports/g);
  return new Set([...places].map((match) => match[1]!));
}

describe("imports run one way, and the linter holds it", () => {
  const found = findings();
  it.each(forbidden.map(([where, imported], index) => [where, imported, index] as const))(
    "%s may not import %s",
    (_w, _i, index) => {
      expect(found.has(`fixture${index}`)).toBe(true);
    },
  );
  it.each(allowed.map(([where, imported], index) => [where, imported, index] as const))(
    "%s may import %s",
    (_w, _i, index) => {
      expect(found.has(`fixture${forbidden.length + index}`)).toBe(false);
    },
  );
  it("checked something", () => expect(found.size).toBe(forbidden.length));
});
