import { readBuildText } from "trialfit";
import { type MeasuringPlan, type SheetRow, sheetText, takeReadings } from "trialfit/papers";
import { describe, expect, it } from "vitest";
import type { FromWorker, Taking, ToWorker } from "../protocol.ts";
import { Bench } from "./Bench.ts";

const TEXT = `trialfit: "1"
name: Two (invented)
use: street
block: { layout: inline, cylinders: "2", bore: 86.500 mm ± 0.010, deckHeight: 220 mm ± 0.05 } # planned
crankshaft: { stroke: 90 mm ± 0.02 }
connectingRod: { length: 144 mm ± 0.02 }
piston: { compressionHeight: 30.5 mm ± 0.03 }
`;

/** A message to the worker, before it is counted. */
type Order = ToWorker extends infer One ? (One extends ToWorker ? Omit<One, "revision"> : never) : never;

/** A bench with a build on it on which somebody measures, and what it told. */
class Measured {
  readonly told: FromWorker[] = [];
  private readonly bench = new Bench((message) => this.told.push(message));
  private revision = 0;

  async take(order: Order): Promise<void> {
    this.revision += 1;
    await this.bench.take({ ...order, revision: this.revision });
  }

  private last<K extends FromWorker["kind"]>(kind: K): Extract<FromWorker, { kind: K }> {
    return this.told.findLast((one): one is Extract<FromWorker, { kind: K }> => one.kind === kind)!;
  }

  get text(): string {
    return this.last("text").text;
  }

  get plan(): MeasuringPlan {
    return this.last("plan").plan;
  }

  get taking(): Taking {
    return this.last("taken").taking;
  }

  row(path: string, place: string): SheetRow {
    return this.plan.find((one) => one.path === path)!.places.find((one) => one.place === place)!.row;
  }

  reading(path: string, place: string): string | undefined {
    return this.plan.find((one) => one.path === path)!.places.find((one) => one.place === place)!.reading;
  }
}

async function measured(): Promise<Measured> {
  const bench = new Measured();
  await bench.take({ kind: "open", text: TEXT, file: "build.yaml" });
  expect(bench.told.some(({ kind }) => kind === "plan")).toBe(false);
  await bench.take({ kind: "measure", units: "written" });
  return bench;
}

const BORE = ["block.bore", "cylinder 2, top, across"] as const;

describe("readings on the workbench", () => {
  it("go into the text of the build, as a filled sheet brings them", async () => {
    const bench = await measured();
    const row = { ...bench.row(...BORE), reading: "86.506", instrument: "bore gauge", uncertainty: "0.003" };
    await bench.take({ kind: "take", row });
    expect(bench.taking).toEqual({
      taken: [{ label: "Block: finished bore, cylinder 2, top, across", text: "86.506 mm" }],
      known: 0,
      refused: [],
    });
    expect(bench.text).toBe(takeReadings(TEXT, "build.yaml", sheetText([row]), "filled.csv").text);
    expect(bench.text).toContain("# planned");
    expect(bench.reading(...BORE)).toBe("86.506 mm");
    expect(bench.told.filter(({ kind }) => kind === "report").length).toBeGreaterThan(2);
  }, 60_000);

  it("that are hardly what was meant are refused with what is predicted, until there is a reason", async () => {
    const bench = await measured();
    const row = bench.row(...BORE);
    for (const [reading, looks] of [
      ["865.06", "a decimal point one place off"],
      ["3.4056", "inches written as millimetres"],
      ["88.5", "far outside of what the tolerances allow"],
    ] as const) {
      await bench.take({ kind: "take", row: { ...row, reading } });
      const [refused = ""] = bench.taking.refused;
      expect(refused).toContain(looks);
      expect(refused).toContain(
        "near 86.5 mm, which the build predicts; measure again, or say why it is right",
      );
      expect(bench.text).toBe(TEXT);
    }
    await bench.take({ kind: "take", row: { ...row, reading: "88.5", "correction because": "bored out" } });
    expect(bench.taking.refused).toEqual([]);
    expect(bench.text).toContain("bored out");
  }, 60_000);

  it("overwrite nothing: a second one is a correction with its reason, and the first is kept", async () => {
    const bench = await measured();
    const row = bench.row(...BORE);
    await bench.take({ kind: "take", row: { ...row, reading: "86.506" } });
    const once = bench.text;
    await bench.take({ kind: "take", row: { ...row, reading: "86.502" } });
    expect(bench.taking.refused[0]).toContain("where 86.506 mm was measured before");
    expect(bench.text).toBe(once);
    await bench.take({
      kind: "take",
      row: { ...row, reading: "86.502", by: "A. N.", "correction because": "the gauge was cold" },
    });
    expect(bench.taking.taken[0]).toMatchObject({ text: "86.502 mm", instead: "86.506 mm" });
    const value = readBuildText(bench.text).values.get("block.bore");
    expect(value).toMatchObject({
      taken: {
        replaces: [{ was: "2, top, across: 86.506 mm", because: "the gauge was cold", by: "A. N." }],
      },
    });
    await bench.take({ kind: "take", row: { ...row, reading: "86.502" } });
    expect(bench.taking).toEqual({ taken: [], known: 1, refused: [] });
  }, 60_000);

  it("come from a filled sheet too, and what is refused is named by its line", async () => {
    const bench = await measured();
    const row = bench.row(...BORE);
    const other = { ...bench.row("block.bore", "cylinder 1, top, along"), reading: "8.6501" };
    const text = sheetText([{ ...row, reading: "86.504" }, other]);
    await bench.take({ kind: "sheet", text, file: "filled.csv" });
    expect(bench.taking.taken).toHaveLength(1);
    expect(bench.taking.refused[0]).toMatch(/^filled\.csv:3:1: reading: found 8\.6501 mm, a tenth/);
    expect(bench.told.find((one) => one.kind === "taken")).toMatchObject({ of: "filled.csv" });
    await bench.take({ kind: "sheet", text: "nothing,of,it\n1,2,3\n", file: "other.csv" });
    expect(bench.taking.refused[0]).toContain("other.csv:1:1");
    expect(bench.reading(...BORE)).toBe("86.504 mm");
  }, 60_000);

  it("are in the build with what was typed while they were taken, whichever came first", async () => {
    const bench = await measured();
    const row = { ...bench.row(...BORE), reading: "86.504" };
    const entry = { form: "text", text: "91 mm ± 0.02", about: {} } as const;
    await Promise.all([
      bench.take({ kind: "take", row }),
      bench.take({ kind: "write", path: "crankshaft.stroke", entry }),
    ]);
    expect(bench.text).toContain("86.504 mm");
    expect(bench.text).toContain("91 mm ± 0.02");
    const last = bench.told.findLast((one) => one.kind === "report");
    expect(last).toMatchObject({ done: true, revision: 4 });
    expect(bench.reading(...BORE)).toBe("86.504 mm");
  }, 60_000);

  it("are asked for as the whole sheet asks, whatever stage is judged", async () => {
    const bench = await measured();
    const whole = bench.plan.map(({ path }) => path);
    expect(whole.length).toBeGreaterThan(5);
    await bench.take({ kind: "judge", options: { stage: "choose" } });
    expect(bench.plan.map(({ path }) => path)).toEqual(whole);
    await bench.take({ kind: "measure", units: "inch" });
    expect(bench.row(...BORE)).toMatchObject({ unit: "in", predicted: "3.40551" });
  }, 60_000);
});
