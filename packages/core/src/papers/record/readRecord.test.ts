import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { evaluate } from "../../evaluate.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { writePapers } from "../writePapers.ts";
import { RECORD_FORMAT } from "./EngineRecord.ts";
import { isRecord, readRecord } from "./readRecord.ts";
import { writeRecord } from "./writeRecord.ts";

/** Written by trialfit before records had a format of their own; most verdicts and quantities were cut out of it. */
const older = readFileSync(new URL("./olderRecord.fixture.json", import.meta.url), "utf8");

describe("the record of an engine", () => {
  it("of format 1 is read, and says what was migrated", () => {
    expect(isRecord(older)).toBe(true);
    const { build, migrated } = readRecord(older, "old.json");
    expect(migrated.join("\n")).toMatch(/format 1/);
    expect(migrated.join("\n")).toMatch(/not carried over.*crankshaft\.throws/);
    expect(migrated.join("\n")).toMatch(/who measured/);
    const read = readBuildText(build, "old.json");
    const was = JSON.parse(older) as {
      fields: { path: string; low?: number; nominal?: number; high?: number; provenance: string }[];
      assumptions: { path: string }[];
    };
    const assumed = new Set(was.assumptions.map(({ path }) => path));
    let compared = 0;
    for (const { path, low, nominal, high, provenance } of was.fields) {
      const value = read.values.get(path);
      if (assumed.has(path) || value?.kind !== "dimension") continue;
      expect(value.nominal, path).toBeCloseTo(nominal!, 12);
      expect(value.low, path).toBeCloseTo(low!, 12);
      expect(value.high, path).toBeCloseTo(high!, 12);
      if (value.unit !== "1") expect(value.provenance, path).toBe(provenance);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(8);
  });

  it("of this format gives back the build file, whole", async () => {
    const text = 'trialfit: "1" # kept\nname: Four, invented\nblock: { bore: 86.5 mm ± 0.01 }\n';
    const papers = await writePapers(readBuildText(text, "four"), {
      date: "2026-03-14",
      only: ["engine-record"],
      rules: [],
    });
    const record = writeRecord(papers, text);
    expect(isRecord(record)).toBe(true);
    expect(readRecord(record, "r.json")).toEqual({ build: text, migrated: [] });
  });

  it("of a later format, or none, is refused", async () => {
    const later = JSON.stringify({ format: "trialfit-record", formatVersion: RECORD_FORMAT + 1, build: "" });
    expect(() => readRecord(later, "r.json")).toThrow(/a newer trialfit wrote it/);
    expect(() => readRecord("{}", "r.json")).toThrow(/no record/);
    expect(() => readRecord("not json", "r.json")).toThrow(/not JSON/);
  });

  it("today's report is what the older format was", async () => {
    const report = await evaluate(
      readBuildText('trialfit: "1"\nname: x\nblock: { bore: 86.5 mm ± 0.01 }\n', "x"),
      { rules: [] },
    );
    const { build } = readRecord(JSON.stringify(report), "r.json");
    expect(readBuildText(build, "x").values.get("block.bore")).toMatchObject({ nominal: 0.0865 });
  });
});
