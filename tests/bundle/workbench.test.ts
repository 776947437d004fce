import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ruleFiles } from "@trialfit/rules";
import { quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { dist } from "../site/sitePages.ts";
import { type PageFile, pageFiles } from "./pageFiles.ts";

/**
 * Compressed bytes of script that the workbench may have, all that can ever be asked for on it. The aim is 200,000: the
 * quantities that were added last took it past that, and it must not grow further before some of it is gone again.
 */
const MOST = 203_000;
const PAGE = "workbench/index.html";

const sum = (files: readonly PageFile[]) => files.reduce((total, { gzip }) => total + gzip, 0);
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

/**
 * Not of the workbench, though files of it name them: what a worker loads to judge a rule on that rule's page, the
 * search of the whole site once it is opened, and the service worker, which runs beside the page and names every file.
 */
const APART = /\/LiveJudge-|\/ui-core\.|^offline\.js$/;

describe("the workbench of the built site", () => {
  const files = pageFiles(dist, PAGE, APART);
  const isApart = ({ path }: PageFile) => APART.test(path);
  const scripts = files.scripts.filter((one) => !isApart(one));
  const read = (all: readonly PageFile[]) =>
    all
      .filter(({ path }) => path !== "inline.js")
      .map(({ path }) => readFileSync(join(dist, path), "utf8"))
      .join("\n");

  it(`has at most ${kB(MOST)} of script, with every view and worker`, () => {
    console.log(
      [
        ...files.scripts.map(
          (one) => `${kB(one.gzip).padStart(9)} ${one.path}${isApart(one) ? " (apart)" : ""}`,
        ),
        `${kB(sum(scripts)).padStart(9)} script in ${scripts.length} files, ${kB(sum(files.data))} data in ${files.data.length}`,
      ].join("\n"),
    );
    for (const name of ["worker", "Bench", "Viewer"])
      expect(scripts.filter(({ path }) => path.includes(`/${name}-`))).toHaveLength(1);
    expect(files.scripts.filter(isApart)).toHaveLength(3);
    expect(sum(scripts)).toBeLessThan(MOST);
  });

  it("has the catalog and what people read of quantities as data", () => {
    const [script, data] = [read(scripts), read(files.data)];
    const said = (text: string) => data.split(JSON.stringify(text).slice(1, -1)).length - 1;
    const rules = ruleFiles.filter(({ because }) => said(because) > 0);
    expect(rules.length).toBe(ruleFiles.length);
    expect(ruleFiles.filter(({ because }) => script.includes(because))).toEqual([]);
    const long = [...quantities.values()].filter(({ meaning }) => meaning.length > 80);
    const told = long.filter(({ meaning }) => said(meaning) > 0);
    console.log(`${rules.length} rules, ${told.length} of ${long.length} long texts of quantities are data`);
    expect(told.length).toBeGreaterThan(long.length / 2);
    expect(long.filter(({ meaning }) => script.includes(meaning))).toEqual([]);
  });

  it("generates no code", () => expect(read(scripts)).not.toMatch(/\bnew Function\b|[^.\w]eval\(/));
});

it("a page that grows is noticed, in a file that comes later too", () => {
  const folder = mkdtempSync(join(tmpdir(), "trialfit-page-"));
  try {
    const random = Array.from({ length: 60_000 }, (_, n) => ((n * 7919) % 65_521).toString(36)).join("");
    writeFileSync(join(folder, "page.html"), '<script>let a = 1;</script><script src="/first.js"></script>');
    writeFileSync(join(folder, "first.js"), 'new Worker("/second.js"); fetch("./some.json");');
    writeFileSync(join(folder, "second.js"), 'import("./third.js");');
    writeFileSync(join(folder, "third.js"), `export const text = "${random}";`);
    writeFileSync(join(folder, "some.json"), "[1]");
    const { scripts, data } = pageFiles(folder, "page.html");
    expect(scripts.map(({ path }) => path).sort()).toEqual([
      "first.js",
      "inline.js",
      "second.js",
      "third.js",
    ]);
    expect(data.map(({ path }) => path)).toEqual(["some.json"]);
    expect(sum(scripts)).toBeGreaterThan(100_000);
    writeFileSync(join(folder, "page.html"), "<p>nothing</p>");
    expect(() => pageFiles(folder, "page.html")).toThrow(/no script/);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
