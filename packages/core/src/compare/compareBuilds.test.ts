import { beforeAll, describe, expect, it } from "vitest";
import { evaluate } from "../evaluate.ts";
import { InputError } from "../read/Problem.ts";
import { readBuild } from "../read/readBuild.ts";
import { renderText } from "../report/renderText.ts";
import type { BuildChange } from "./BuildChange.ts";
import { compareBuilds } from "./compareBuilds.ts";
import { compareReports } from "./compareReports.ts";
import { describeChange } from "./describeChange.ts";

type Raw = Readonly<Record<string, unknown>>;

const build: Raw = {
  trialfit: "1",
  name: "Test",
  use: "circuit",
  block: { bore: "88.50 mm ± 0.01", deckHeight: "227.00 mm ± 0.05", cylinders: "4" },
  crankshaft: { stroke: "90.00 mm ± 0.02" },
  connectingRod: { length: "150.00 mm ± 0.05" },
  piston: { compressionHeight: "31.20 mm ± 0.03" },
  headGasket: { compressedThickness: "1.00 mm ± 0.02" },
};
const withPart = (part: string, change: Raw): Raw => ({
  ...build,
  [part]: { ...(build[part] as object), ...change },
});
const quantityOf = (change: BuildChange, id: string) => change.quantities.find((one) => one.id === id);
const asText = (change: BuildChange) => renderText(describeChange(change)).replaceAll(/\s+/g, " ");

describe("two states of a build", () => {
  let stroked: BuildChange;
  beforeAll(async () => {
    stroked = await compareBuilds(build, withPart("crankshaft", { stroke: "94.00 mm ± 0.02" }));
  });

  it("names the value that changed and nothing else", () => {
    expect(stroked.values).toEqual([
      {
        path: "crankshaft.stroke",
        label: "Crankshaft: stroke",
        before: "90.00 mm ± 0.02",
        after: "94.00 mm ± 0.02",
        aspects: ["value"],
      },
    ]);
  });
  it("says how far a quantity moved and what moved it: half of the stroke's growth", () => {
    const deck = quantityOf(stroked, "deckClearance");
    expect(deck?.before?.nominal).toBeCloseTo(0.0008, 12);
    expect(deck?.after?.nominal).toBeCloseTo(-0.0012, 12);
    expect(deck?.causes).toHaveLength(1);
    expect(deck?.causes[0]).toMatchObject({ path: "crankshaft.stroke" });
    expect(deck?.causes[0]?.change).toBeCloseTo(-0.002, 12);
  });
  it("lists just the verdicts that two evaluations differ in", async () => {
    const words = async (one: Raw) =>
      new Map((await evaluate(one)).verdicts.map(({ rule, verdict }) => [rule, verdict]));
    const [was, is] = [
      await words(build),
      await words(withPart("crankshaft", { stroke: "94.00 mm ± 0.02" })),
    ];
    const differing = [...is].filter(([rule, word]) => was.get(rule) !== word).map(([rule]) => rule);
    expect(stroked.verdicts.map(({ rule }) => rule).sort()).toEqual(differing.sort());
    expect(differing).toContain("stack-fits-deck");
    for (const one of stroked.verdicts) expect(one.because).toEqual(["crankshaft.stroke"]);
  });
  it("puts what became worse first", () => {
    const order = ["fails", "unknown", "open", "not-applicable", "holds"];
    const falls = stroked.verdicts.map(({ before, after }) => order.indexOf(after) - order.indexOf(before));
    expect(falls).toEqual([...falls].sort((a, b) => a - b));
    expect(falls.length).toBeGreaterThan(0);
  });
  it("tells apart what each of two changes does", async () => {
    const both = {
      ...withPart("crankshaft", { stroke: "94.00 mm ± 0.02" }),
      ...{ block: { ...(build.block as object), deckHeight: "229.50 mm ± 0.05" } },
    };
    const deck = quantityOf(await compareBuilds(build, both), "deckClearance");
    expect(deck?.causes.map(({ path }) => path)).toEqual(["block.deckHeight", "crankshaft.stroke"]);
    expect(deck?.causes[0]?.change).toBeCloseTo(0.0025, 12);
    expect(deck?.causes[1]?.change).toBeCloseTo(-0.002, 12);
  });
  it("sees a tolerance that shrank and a value that was measured, where the size stayed", async () => {
    const change = await compareBuilds(
      build,
      withPart("block", { deckHeight: { value: "227.00 mm", uncertainty: "0.01 mm" } }),
    );
    expect(change.values).toMatchObject([{ path: "block.deckHeight", aspects: ["tolerance", "provenance"] }]);
    const deck = quantityOf(change, "deckClearance");
    expect(deck?.causes).toEqual([]);
    expect(deck!.after!.high - deck!.after!.low).toBeLessThan(deck!.before!.high - deck!.before!.low);
    expect(asText(change)).toContain("its tolerances are not");
  });
  it("sees a default that a given value replaced, and what came and went", async () => {
    const { headGasket: _, ...bare } = build;
    const gone = await compareBuilds(build, bare);
    const gasket = gone.values.find(({ path }) => path === "headGasket.compressedThickness");
    expect(gasket?.before).toBe("1.00 mm ± 0.02");
    expect(gasket?.after).toBeUndefined();
    expect(quantityOf(gone, "squishGap")?.after).toBeUndefined();
    expect(asText(gone)).toContain("1.00 mm ± 0.02 → nothing");
    expect(asText(gone)).toContain("not computable");
  });
  it("finds nothing where only the unit, the order or the layout is another", async () => {
    const inches = withPart("headGasket", {
      compressedThickness: "0.03937007874015748 in ± 0.0007874015748031496",
    });
    const turned = Object.fromEntries(Object.entries(inches).reverse());
    const change = await compareBuilds(build, turned);
    expect(change.values).toEqual([]);
    expect(change.verdicts).toEqual([]);
    expect(change.quantities).toEqual([]);
    expect(asText(change)).toContain("Nothing changed.");
  });
  it("keeps what a person confirmed apart", async () => {
    const entry = { seen: "yes", by: "J. B.", on: "2026-03-14", how: "feeler gauge" };
    const confirmed = { ...build, confirmations: { "caps-drawn-down-evenly": entry } };
    const change = await compareBuilds(build, confirmed);
    expect(change.values).toMatchObject([
      { path: "confirmations.caps-drawn-down-evenly", after: "yes, J. B., 2026-03-14: feeler gauge" },
    ]);
    expect(change.verdicts).toMatchObject([
      { rule: "caps-drawn-down-evenly", before: "unknown", after: "holds" },
    ]);
    const other = { ...build, confirmations: { "caps-drawn-down-evenly": { ...entry, by: "K. L." } } };
    expect((await compareBuilds(confirmed, other)).values).toMatchObject([{ aspects: ["confirmation"] }]);
  });
  it("sees a reading at one cylinder", async () => {
    const at = (third: string) =>
      withPart("block", {
        bore: {
          readings: { "1": "88.51 mm", "2": "88.51 mm", "3": third, "4": "88.51 mm" },
          uncertainty: "0.003 mm",
        },
      });
    const change = await compareBuilds(at("88.51 mm"), at("88.53 mm"));
    expect(change.values[0]?.path).toBe("block.bore");
    expect(change.values[0]?.aspects).toContain("readings");
  });
  it("takes builds that were read, and refuses what is none", async () => {
    expect((await compareBuilds(readBuild(build), build)).values).toEqual([]);
    await expect(compareBuilds(build, { trialfit: "1" })).rejects.toThrow(InputError);
  });
  it("is the same from two reports, and ends when it is told to", async () => {
    const [before, after] = await Promise.all(
      [build, withPart("crankshaft", { stroke: "94.00 mm ± 0.02" })].map(async (one) => ({
        build: readBuild(one),
        report: await evaluate(one),
      })),
    );
    expect(await compareReports(before!, after!)).toEqual(stroked);
    const reason = new Error("something newer");
    await expect(compareReports(before!, after!, AbortSignal.abort(reason))).rejects.toBe(reason);
  });
  it("is plain data", () => expect(JSON.parse(JSON.stringify(stroked))).toEqual(stroked));
});
