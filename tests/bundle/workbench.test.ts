import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ruleFiles } from "@trialfit/rules";
import { quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { dist } from "../site/sitePages.ts";
import { type PageFile, pageFiles } from "./pageFiles.ts";

/** Compressed bytes of script that the workbench may have: to fill in a build and judge it. */
const MOST = 200_000;
/** The same of what is fetched when somebody looks at the pictures. */
const MOST_TO_DRAW = 16_000;
/** The same of what is fetched when somebody measures or has papers written, which compare two states too. */
const MOST_ON_DEMAND = 55_000;
/** And of what is fetched when somebody has sizes found, or what would make a finding hold. */
const MOST_TO_CHOOSE = 40_000;
/** And of what is fetched when somebody puts another build beside this one, or asks how a number comes about. */
const MOST_TO_COMPARE = 12_000;
const PAGE = "workbench/index.html";

/** Names that ask for each other in a circle, or none. */
function circleIn(asks: ReadonlyMap<string, readonly string[]>): readonly string[] {
  const done = new Set<string>();
  const follow = (name: string, way: readonly string[]): readonly string[] => {
    if (way.includes(name)) return way.slice(way.indexOf(name));
    if (done.has(name)) return [];
    for (const other of asks.get(name) ?? []) {
      const circle = follow(other, [...way, name]);
      if (circle.length > 0) return circle;
    }
    done.add(name);
    return [];
  };
  for (const name of asks.keys()) {
    const circle = follow(name, []);
    if (circle.length > 0) return circle;
  }
  return [];
}

const sum = (files: readonly PageFile[]) => files.reduce((total, { gzip }) => total + gzip, 0);
const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;

/**
 * Not of the workbench, though files of it name them: what a worker loads to judge a rule on that rule's page, the
 * search of the whole site once it is opened, and the service worker, which runs beside the page and names every file.
 */
const APART = /\/LiveJudge-|\/ui-core\.|^offline\.js$/;

/** What begins drawing the build: what only this asks for is its own. */
const DRAWING = /\/Viewer-/;
/** What begins finding sizes and changes, on the page and in workers: what only these ask for is theirs. */
const CHOOSING = /\/(?:ChoosingPanel|RemedyPanel|Told|findSizes|findChanges)[-.]/;
/** The same of two builds side by side, and of how a number comes about. */
const COMPARING = /\/(?:ComparePanel|OtherBuild|NumberPanel|traceNumbers)[-.]/;
/** The same of measuring and papers, and of what does any of it. */
const ON_DEMAND = /\/(?:MeasuringPanel|PapersPanel|PaperDesk|DeskClient|Desk|measure)[-.]/;

describe("the workbench of the built site", () => {
  const files = pageFiles(dist, PAGE, APART);
  const isApart = ({ path }: PageFile) => APART.test(path);
  /** Paths of what is asked for without any of these. */
  const without = (...begun: readonly RegExp[]) => {
    const all = new RegExp([APART, ...begun].map(({ source }) => source).join("|"));
    const paths = pageFiles(dist, PAGE, all).scripts.map(({ path }) => path);
    return new Set(paths.filter((path) => !begun.some((one) => one.test(path))));
  };
  const own = without(DRAWING, ON_DEMAND, CHOOSING, COMPARING);
  const notToDraw = without(DRAWING);
  const notToChoose = without(CHOOSING);
  const notToCompare = without(COMPARING);
  const isToCompare = ({ path }: PageFile) => !notToCompare.has(path);
  const isToDraw = ({ path }: PageFile) => !notToDraw.has(path);
  const isOnDemand = ({ path }: PageFile) =>
    !own.has(path) && notToDraw.has(path) && notToChoose.has(path) && notToCompare.has(path);
  const isToChoose = ({ path }: PageFile) => !notToChoose.has(path);
  const every = files.scripts.filter((one) => !isApart(one));
  const scripts = every.filter(({ path }) => own.has(path));
  const onDemand = every.filter(isOnDemand);
  const toChoose = every.filter(isToChoose);
  const toDraw = every.filter(isToDraw);
  const toCompare = every.filter(isToCompare);
  const kinds = [
    [isApart, " (apart)"],
    [isToDraw, " (to draw)"],
    [isToChoose, " (to choose)"],
    [isToCompare, " (to compare)"],
    [isOnDemand, " (on demand)"],
  ] as const;
  const mark = (one: PageFile) => kinds.find(([is]) => is(one))?.[1] ?? "";
  const read = (all: readonly PageFile[]) =>
    all
      .filter(({ path }) => path !== "inline.js")
      .map(({ path }) => readFileSync(join(dist, path), "utf8"))
      .join("\n");

  it(`has at most ${kB(MOST)} of script to fill in a build and judge it`, () => {
    console.log(
      [
        ...files.scripts.map((one) => `${kB(one.gzip).padStart(9)} ${one.path}${mark(one)}`),
        `${kB(sum(scripts)).padStart(9)} script in ${scripts.length} files, ${kB(sum(files.data))} data in ${files.data.length}`,
        `${kB(sum(toDraw)).padStart(9)} more in ${toDraw.length} files to draw`,
        `${kB(sum(onDemand)).padStart(9)} more in ${onDemand.length} files to measure and to write papers`,
        `${kB(sum(toChoose)).padStart(9)} more in ${toChoose.length} files to find sizes and changes`,
        `${kB(sum(toCompare)).padStart(9)} more in ${toCompare.length} files to put another build beside this one and to trace numbers`,
      ].join("\n"),
    );
    for (const name of ["worker", "Bench"])
      expect(scripts.filter(({ path }) => path.includes(`/${name}-`))).toHaveLength(1);
    expect(files.scripts.filter(isApart)).toHaveLength(3);
    expect(sum(scripts)).toBeLessThan(MOST);
  });

  it(`fetches at most ${kB(MOST_TO_DRAW)} more to draw`, () => {
    expect(toDraw.filter(({ path }) => path.includes("/Viewer-"))).toHaveLength(1);
    expect(sum(toDraw)).toBeLessThan(MOST_TO_DRAW);
  });

  it(`fetches at most ${kB(MOST_ON_DEMAND)} more to measure and to write papers`, () => {
    for (const name of ["MeasuringPanel", "PapersPanel", "PaperDesk", "Desk", "measure"])
      expect(onDemand.filter(({ path }) => new RegExp(`/${name}[-.]`).test(path))).toHaveLength(1);
    expect(sum(onDemand)).toBeGreaterThan(20_000);
    expect(sum(onDemand)).toBeLessThan(MOST_ON_DEMAND);
    // A sentence that stands on a paper is in none of the files that judging takes.
    const held = "HELD: not to be used yet.";
    const within = (all: readonly PageFile[]) => read(all).includes(held);
    expect([within([...onDemand, ...files.data]), within(scripts)]).toEqual([true, false]);
  });

  it(`fetches at most ${kB(MOST_TO_CHOOSE)} more to find sizes and changes`, () => {
    for (const name of ["ChoosingPanel", "RemedyPanel", "findSizes", "findChanges"])
      expect(toChoose.filter(({ path }) => new RegExp(`/${name}[-.]`).test(path))).toHaveLength(1);
    expect(sum(toChoose)).toBeGreaterThan(20_000);
    expect(sum(toChoose)).toBeLessThan(MOST_TO_CHOOSE);
    const said = "unachievable by one dimension alone";
    const within = (all: readonly PageFile[]) => read(all).includes(said);
    expect([within(toChoose), within([...scripts, ...onDemand])]).toEqual([true, false]);
  });

  it(`fetches at most ${kB(MOST_TO_COMPARE)} more to put another build beside this one and to trace numbers`, () => {
    for (const name of ["ComparePanel", "OtherBuild", "NumberPanel", "traceNumbers"])
      expect(toCompare.filter(({ path }) => new RegExp(`/${name}[-.]`).test(path))).toHaveLength(1);
    expect(sum(toCompare)).toBeLessThan(MOST_TO_COMPARE);
    const said = "Findings whose verdict differs";
    const within = (all: readonly PageFile[]) => read(all).includes(said);
    expect([within(toCompare), within([...scripts, ...onDemand, ...toChoose])]).toEqual([true, false]);
  });

  it("has the catalog and what people read of quantities as data", () => {
    const [script, data] = [read(every), read(files.data)];
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

  it("has no files that ask for each other: they would wait for each other for ever", () => {
    const folder = join(dist, "_astro");
    const scripts = readdirSync(folder).filter((name) => name.endsWith(".js"));
    const asks = (name: string) =>
      [...readFileSync(join(folder, name), "utf8").matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)].map(
        ([, other]) => other!,
      );
    const circle = circleIn(new Map(scripts.map((name) => [name, asks(name)])));
    expect(circle).toEqual([]);
    expect(
      circleIn(
        new Map([
          ["a", ["b"]],
          ["b", ["c"]],
          ["c", ["b"]],
        ]),
      ),
    ).toEqual(["b", "c"]);
  });

  it("generates no code", () => expect(read(every)).not.toMatch(/\bnew Function\b|[^.\w]eval\(/));
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
