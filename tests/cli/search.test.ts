import { spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { readBuildText, readPartsListText, type SearchResult } from "trialfit";
import { afterAll, describe, expect, it } from "vitest";
import { runCommand } from "./runCommand.ts";

const at = (name: string) => fileURLToPath(new URL(`../../packages/core/demo/${name}`, import.meta.url));
const build = at("larkspur-hill.yaml");
const lists = readdirSync(at("parts")).map((file) => at(`parts/${file}`));
const folder = mkdtempSync(join(tmpdir(), "trialfit-search-"));
afterAll(() => rmSync(folder, { recursive: true }));

/** A few rows of an invented list. */
function short(part: string, rows: readonly number[], name = part): string {
  const text = readFileSync(at(`parts/${part}.csv`), "utf8").split("\n");
  const heads = text.findIndex((line) => line.startsWith("id,"));
  const path = join(folder, `${name}.csv`);
  writeFileSync(path, [...text.slice(0, heads + 1), ...rows.map((row) => text[heads + row])].join("\n"));
  return path;
}
const few = [
  short("crankshaft", [32, 33, 120]),
  short("connectingRod", [13, 60]),
  short("piston", [5, 60, 176, 184]),
  short("pistonPin", [3, 89]),
];
const basic = [build, "--stage", "choose", "--list", ...few];
const json = (args: readonly string[]) => {
  const { stdout, status, stderr } = runCommand(["search", ...args, "--format", "json"]);
  return { status, stderr, result: JSON.parse(stdout) as SearchResult };
};
const flat = (text: string) => text.replace(/\s+/g, " ");

describe("trialfit search", () => {
  const { status, stderr, result } = json([...basic, "--best", "3", "--front", "cost,mass"]);

  it("finds the best and says why others fell out", () => {
    expect([status, stderr]).toEqual([0, ""]);
    expect(result).toMatchObject({ complete: true, combinations: 48, terms: { best: 3, currency: "EUR" } });
    expect(result.best.length).toBeGreaterThan(0);
    expect(result.front!.length).toBeGreaterThan(0);
    expect(result.fellOut.length).toBeGreaterThan(0);
    const costs = result.best.map(({ cost }) => cost!);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    const text = runCommand(["search", ...basic, "--front", "cost,mass"]);
    expect(text.status).toBe(0);
    const [first] = result.best;
    expect(flat(text.stdout)).toContain(`• 1. ${first!.cost!.toFixed(2)} EUR`);
    for (const { id } of first!.parts) expect(text.stdout).toContain(id);
    expect(flat(text.stdout)).toMatch(/Why others fell out .* would have saved it/);
    expect(flat(text.stdout)).toContain("No other beats these in cost, mass together");
  });

  it("gives the same in shards that are merged, in any order", () => {
    const files = [1, 2, 3].map((part) => {
      const file = join(folder, `shard-${part}.json`);
      const shard = runCommand([
        "search",
        ...basic,
        "--best",
        "3",
        "--front",
        "cost,mass",
        "--shard",
        `${part}/3`,
        "--format",
        "json",
      ]);
      writeFileSync(file, shard.stdout);
      return file;
    });
    const merged = json(["--merge", files[2]!, files[0]!, files[1]!]);
    expect([merged.status, merged.stderr]).toEqual([0, ""]);
    expect([merged.result.best, merged.result.front]).toEqual([result.best, result.front]);
    const lacking = runCommand(["search", "--merge", files[0]!, files[1]!]);
    expect([lacking.status, lacking.stderr]).toEqual([
      2,
      expect.stringContaining("found 2 of 3; expected also 3"),
    ]);
    const twice = runCommand(["search", "--merge", files[0]!, files[0]!]);
    expect(twice.stderr).toContain("shard 1 once more");
    expect(runCommand(["search", "--merge", build]).stderr).toContain("found no JSON");
  });

  it("says with exit code 1 that nothing fits", () => {
    const none = runCommand([
      "search",
      build,
      "--stage",
      "choose",
      "--list",
      short("ringSet", [10], "rings"),
      "--holds",
    ]);
    expect(none.status).toBe(1);
    expect(flat(none.stdout)).toContain("None of 1 combination of 1 kind of parts fits.");
  });

  it("writes the build with the best parts, which is then judged as any", () => {
    const file = join(folder, "best.yaml");
    expect(runCommand(["search", ...basic, "--write", file]).status).toBe(0);
    const written = readBuildText(readFileSync(file, "utf8"), file);
    const chosen = result.best[0]!.parts;
    expect(chosen).toHaveLength(4);
    for (const { part, id } of chosen) {
      const list = few.find((one) => one.endsWith(`${part}.csv`))!;
      const listed = readPartsListText(readFileSync(list, "utf8"), list).parts.find((one) => one.id === id)!;
      expect(listed.values.size).toBeGreaterThan(5);
      for (const [path, value] of listed.values) expect(written.values.get(path), path).toEqual(value);
    }
    expect(written.values.get("piston.originalCompressionHeight")).toBeDefined();
    expect(runCommand(["check", file, "--stage", "choose"]).status).toBeLessThan(2);
  });

  it("is stopped by Ctrl-C, keeps what it has, and goes on from there", async () => {
    const state = join(folder, "state.json");
    const bin = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));
    // Counting all that fits of ten whole lists ends in no lifetime.
    const args = [
      "search",
      build,
      "--stage",
      "choose",
      "--count",
      "--progress",
      "--state",
      state,
      "--list",
      ...lists,
    ];
    const run = () =>
      new Promise<{ code: number | null; output: string }>((resolve) => {
        const child = spawn(process.execPath, [bin, ...args], { stdio: ["ignore", "pipe", "pipe"] });
        let output = "";
        child.stdout.setEncoding("utf8").on("data", (piece: string) => {
          output += piece;
        });
        // However slow the machine is: it has looked at some before it is stopped.
        child.stderr.setEncoding("utf8").on("data", (line: string) => {
          if (Number(/(\d+) choices looked at/.exec(line)?.[1] ?? 0) >= 20) child.kill("SIGINT");
        });
        child.on("close", (code) => resolve({ code, output }));
      });
    const first = await run();
    expect(first.code).toBe(1);
    expect(flat(first.output)).toContain(
      "Stopped before the end: better ones may be among those not looked at.",
    );
    const kept = JSON.parse(readFileSync(state, "utf8")) as SearchResult;
    expect(kept.complete).toBe(false);
    expect(kept.effort.steps).toBeGreaterThanOrEqual(20);
    await run();
    const later = JSON.parse(readFileSync(state, "utf8")) as SearchResult;
    const counted = ({ reached, fellOut }: SearchResult) =>
      fellOut.reduce((sum, { fails }) => sum + fails, reached);
    expect(counted(later)).toBeGreaterThanOrEqual(counted(kept));
    expect(later.place).not.toEqual(kept.place);
    const other = runCommand(["search", ...basic, "--state", state]);
    expect([other.status, other.stderr]).toEqual([
      2,
      expect.stringContaining("found a result of another search"),
    ]);
  });

  it("says the same with any number of workers, and finds what it finds without", () => {
    const [one, ...more] = ["1", "2", "3"].map((workers) =>
      runCommand(["search", ...basic, "--front", "cost,mass", "--workers", workers]),
    );
    expect(one!.status).toBe(0);
    for (const other of more) expect(other).toEqual(one);
    const { result: alone } = json([...basic, "--front", "cost,mass"]);
    const { result: cut } = json([...basic, "--front", "cost,mass", "--workers", "2"]);
    expect([cut.best, cut.front, cut.combinations]).toEqual([alone.best, alone.front, alone.combinations]);
    expect(alone.best.length).toBeGreaterThan(0);
  });

  it("takes out what is not known, on demand, and says where it is not", () => {
    const pistons = short("piston", [5, 60, 176, 184], "pistons-and-a-bare-one");
    const row = "BARE,Of which next to nothing is stated,1.00,1,1,0.1";
    const text = readFileSync(pistons, "utf8").trimEnd();
    const heads = text.split("\n").find((line) => line.startsWith("id,"))!;
    const nothing = ",".repeat(heads.split(",").length - row.split(",").length);
    writeFileSync(pistons, `${text}\n${row}${nothing}\n`);
    const asked = [build, "--stage", "choose", "--list", ...few.filter((file) => file !== few[2]), pistons];
    const { result: free } = json(asked);
    expect(free.best[0]!.parts.map(({ id }) => id)).toContain("BARE");
    expect(free.best[0]!.stops.unknown.length).toBeGreaterThan(3);
    expect(flat(runCommand(["search", ...asked]).stdout)).toContain("Some stop rules are unknown for");
    const { result: known } = json([...asked, "--known"]);
    expect(known.best.length).toBeGreaterThan(0);
    expect(known.best.flatMap(({ stops }) => stops.unknown)).toEqual([]);
    expect(known.fellOut.some(({ unsettled }) => unsettled > 0)).toBe(true);
  });

  it("takes up a finished search as it is", () => {
    const state = join(folder, "done.json");
    const once = json([...basic, "--state", state]);
    expect(existsSync(state)).toBe(true);
    const again = json([...basic, "--state", state]);
    expect(again.result.best).toEqual(once.result.best);
    expect(again.result.effort.steps).toBe(0);
  });

  it.each([
    [["search", build], "name the parts lists to choose from"],
    [["search", ...basic, "--objective", "price"], "Invalid value for argument: --objective (price)."],
    [["search", ...basic, "--workers", "0"], '--workers: found "0"; expected a whole number from 1 to 64'],
    [["search", ...basic, "--workers", "2", "--shard", "1/2"], "leave out --shard and --state"],
    [["search", ...basic, "--workers", "2", "--best", "9999"], "best 9999: expected a whole number"],
    [["search", ...basic, "--weights", "cost 1"], "--weights goes with --objective weights"],
    [["search", ...basic, "--objective", "weights"], "--objective weights needs --weights"],
    [
      ["search", ...basic, "--objective", "weights", "--weights", "mass 30"],
      "a weight of mass without a unit",
    ],
    [
      ["search", ...basic, "--objective", "weights", "--weights", "mas 30/kg"],
      "--weights mas: expected cost, margin",
    ],
    [["search", ...basic, "--front", "cost,beauty"], "--front beauty: expected cost, margin, mass, time"],
    [["search", ...basic, "--best", "some"], "--best some: expected a whole number"],
    [["search", ...basic, "--best", "9999"], "best 9999: expected a whole number from 0 to 1000"],
    [["search", ...basic, "--shard", "4/3"], "--shard 4/3: expected a part of a whole"],
    [["search", ...basic, "--lists", "x"], 'did you mean "--list"?'],
  ])("refuses %j", (args, message) => {
    const { status, stderr, stdout } = runCommand(args);
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr).toContain(message);
  });

  it("refuses parts without what is compared, and lists that do not go together", () => {
    const bare = join(folder, "bare.csv");
    writeFileSync(bare, "# part: oil\nid,grade\nO-1,60\n");
    const { status, stderr } = runCommand(["search", ...basic, bare]);
    expect(status).toBe(2);
    expect(stderr).toContain(
      'bare.csv:3:1: O-1, column "price": found nothing; expected a value for every part: cost is compared',
    );
    const other = join(folder, "other.csv");
    writeFileSync(other, "# part: oil\nid,grade,price (USD)\nO-1,60,10\n");
    expect(runCommand(["search", ...basic, other]).stderr).toMatch(
      /found prices in (USD|EUR); expected prices in/,
    );
  });
});

describe("trialfit parts", () => {
  it("says what is in lists", () => {
    const { status, stdout } = runCommand(["parts", ...lists]);
    expect(status).toBe(0);
    expect(stdout).toContain("2050 parts in 10 lists, all of them read.");
    const data = JSON.parse(runCommand(["parts", few[2]!, "--format", "json"]).stdout);
    expect(data[0].parts).toHaveLength(4);
    expect(data[0].parts[0].entries.compressionHeight).toMatch(/mm/);
  });
  it("names row and column of what is wrong, in all lists at once", () => {
    const [one, other] = ["one.csv", "two.csv"].map((name) => join(folder, name));
    writeFileSync(one!, "# part: piston\nid,compressionHeight\nP-1,31\n");
    writeFileSync(other!, "# part: pistonPin\nid,outerDiametre (mm)\nP-1,22\n");
    const { status, stderr } = runCommand(["parts", one!, other!]);
    expect(status).toBe(2);
    expect(stderr).toContain(
      `${one}:3:5: row 1, column "compressionHeight": found "31": a number without a unit`,
    );
    expect(stderr).toMatch(/two\.csv:2:4: column "outerDiametre": .*Did you mean "outerDiameter"/);
    expect(runCommand(["parts"]).status).toBe(2);
  });
});

describe("under GNU parallel", () => {
  const hasParallel = spawnSync("parallel", ["--version"]).status === 0;

  it.skipIf(!hasParallel)("finds what one process finds (skipped where there is no GNU parallel)", () => {
    const bin = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));
    const own = join(folder, "trialfit");
    writeFileSync(own, `#!/bin/sh\nexec ${process.execPath} ${bin} "$@"\n`);
    chmodSync(own, 0o755);
    const asked = [...basic, "--front", "cost,mass"];
    const command =
      'parallel --will-cite trialfit search "$@" --shard {}/3 --format json ">" part-{}.json ::: 1 2 3';
    const { status, stderr } = spawnSync("sh", ["-c", command, "sh", ...asked], {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, PATH: `${folder}:${process.env.PATH}` },
    });
    expect([status, stderr]).toEqual([0, ""]);
    const parts = [1, 2, 3].map((part) => join(folder, `part-${part}.json`));
    const { stdout } = runCommand(["search", "--merge", ...parts, "--format", "json"]);
    const merged = JSON.parse(stdout) as SearchResult;
    const { result: alone } = json(asked);
    expect([merged.best, merged.front, merged.combinations]).toEqual([
      alone.best,
      alone.front,
      alone.combinations,
    ]);
  });
});
