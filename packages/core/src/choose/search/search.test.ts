import { readFileSync } from "node:fs";
import { ruleFiles } from "@trialfit/rules";
import { describe, expect, it } from "vitest";
import type { Build } from "../../read/Build.ts";
import { formatProblem, InputError } from "../../read/Problem.ts";
import { readBuildText } from "../../read/readBuild.ts";
import { readPartsListText } from "../lists/readPartsListText.ts";
import { withParts } from "../lists/withParts.ts";
import { type SearchOptions, search } from "./search.ts";

const text = `trialfit: "1"
name: Block (invented)
use: circuit
block: { layout: inline, cylinders: "4", bore: 86.5 mm, deckHeight: 220 mm }
crankshaft: { stroke: 88 mm, originalStroke: 86 mm, crankpinDiameter: 48 mm, mass: 15 kg }
connectingRod: { length: 144 mm }
piston: { compressionHeight: 29 mm }
`;
const build = readBuildText(text);
const heads = "id,stroke (mm),price (EUR),leadTime (d),stock,totalMass (kg)";
const list = (rows: string, file = "shafts.csv", columns = heads) =>
  readPartsListText(`# part: crankshaft\n# keep: originalStroke\n${columns}\n${rows}\n`, file);
const shafts = list("S-1,86,100,20,1,15\nS-2,90,90,10,0,16\nS-3,100,80,30,2,17");
const rule = (id: string) => ruleFiles.find((one) => one.id === id)!;
const rules = [rule("stack-fits-deck")];
const options: SearchOptions = { fixed: build, candidates: [shafts], rules };
const ids = async (more: Partial<SearchOptions>) =>
  (await search({ ...options, ...more })).best.map(({ parts }) => parts.map(({ id }) => id).join());

async function refused(more: Partial<SearchOptions>): Promise<string> {
  try {
    await search({ ...options, ...more });
    return "not refused";
  } catch (error) {
    return error instanceof InputError
      ? error.problems.map(formatProblem).join("\n")
      : (error as Error).message;
  }
}

describe("search", () => {
  it("ranks by each aim, and by what each is worth", async () => {
    const free = { rules: [] };
    expect(await ids({ ...free, objective: "cost" })).toEqual(["S-3", "S-2", "S-1"]);
    expect(await ids({ ...free, objective: "mass" })).toEqual(["S-1", "S-2", "S-3"]);
    expect(await ids({ ...free, objective: "time" })).toEqual(["S-2", "S-1", "S-3"]);
    expect(await ids({ ...free, objective: { cost: "1", time: "1/d" } })).toEqual(["S-2", "S-3", "S-1"]);
    // A kilogram for 10.1 outweighs the 10 that the next heavier shaft is cheaper.
    expect(await ids({ ...free, objective: { cost: "1", mass: "10.1/kg" } })).toEqual(["S-1", "S-2", "S-3"]);
    expect(await ids({ ...free, objective: { cost: "1", mass: "9.9/kg" } })).toEqual(["S-3", "S-2", "S-1"]);
    expect(await ids({ ...free, best: 1 })).toEqual(["S-3"]);
    expect(await ids({ ...free, best: 0 })).toEqual([]);
  });

  it("takes the old part away whole, but for what the list keeps", async () => {
    const { limits: _, when: __, ...bare } = rules[0]!;
    const requires = { fact: "crankshaft.mass", operator: "lessThan" as const, value: "1 kg" };
    const texts = {
      because: "Only for this test of the search.",
      otherwise: { ...bare.otherwise, do: "Nothing." },
    };
    const heavier = [{ ...bare, requires, ...texts }];
    const result = await search({ ...options, rules: heavier });
    // The old shaft of 15 kg would fail; of the new ones nobody knows the mass of one.
    expect(result.best.map(({ stops }) => stops.unknown)).toEqual([
      ["stack-fits-deck"],
      ["stack-fits-deck"],
      ["stack-fits-deck"],
    ]);
  });

  it("says why the others fell out, and what would have saved the nearest", async () => {
    const { best, fellOut, combinations, reached, outranked } = await search(options);
    expect(best.map(({ parts }) => parts[0]!.id)).toEqual(["S-2", "S-1"]);
    expect([combinations, reached + outranked]).toEqual([3, 2]);
    const [fallen] = fellOut;
    expect(fallen).toMatchObject({ rule: "stack-fits-deck", fails: 1, unsettled: 0 });
    expect(fallen!.nearest!.parts).toEqual([{ part: "crankshaft", id: "S-3" }]);
    expect(fallen!.nearest!.short).toBeGreaterThan(0);
  });

  it("asks the aims of the build at nominal values", async () => {
    const aiming = readBuildText(`${text}aims: { engineDisplacement: at least 2.1 L }\n`);
    const { best, fellOut } = await search({ ...options, fixed: aiming, rules: [] });
    expect(best.map(({ parts }) => parts[0]!.id)).toEqual(["S-3", "S-2"]);
    expect(best[0]!.aims).toMatchObject([{ id: "engineDisplacement", value: expect.closeTo(2.3507e-3, 6) }]);
    expect(fellOut).toMatchObject([{ rule: "aims.engineDisplacement", fails: 1 }]);
    expect(best[0]!.margin).toBeUndefined();
  });

  it("takes only what is in stock where that is asked", async () => {
    expect(await ids({ rules: [], inStock: true })).toEqual(["S-3", "S-1"]);
    expect(await refused({ candidates: [list("S-1,86,1,1,0,1")], inStock: true })).toMatch(
      /no part in stock/,
    );
  });

  it("forgets what a person saw on a part that is exchanged", async () => {
    const asks = ruleFiles.find(
      ({ confirm, parts }) => confirm !== undefined && parts.includes("crankshaft"),
    )!;
    const seen = readBuildText(
      `${text}confirmations: { ${asks.id}: { seen: yes, by: J. B., on: 2026-03-14, how: by eye } }\n`,
    );
    const told = await search({ ...options, fixed: seen, rules: [asks] });
    expect(told.unseen).toEqual([asks.id]);
    expect(told.best[0]!.stops.holds).toBe(0);
  });

  it("refuses what cannot be searched", async () => {
    expect(await refused({ candidates: [] })).toMatch(/no parts lists/);
    expect(await refused({ candidates: [shafts, shafts] })).toMatch(/the id "S-1" in two lists of one kind/);
    expect(await refused({ fixed: readBuildText(text.replace("144 mm", '"? 140 mm to 150 mm"')) })).toMatch(
      /connectingRod\.length: found a dimension that is to be found/,
    );
    expect(await refused({ candidates: [list("S-1,86", "a.csv", "id,stroke (mm)")] })).toMatch(
      /a\.csv:4:1: S-1, column "price": found nothing/,
    );
    expect(
      await refused({ candidates: [list("S-1,86", "a.csv", "id,stroke (mm)")], objective: "margin", rules }),
    ).toBe("not refused");
    expect(await refused({ best: 1.5 })).toMatch(/best 1\.5: expected a whole number/);
    expect(await refused({ shard: { part: 3, of: 2 } })).toMatch(
      /shard 3: expected a whole number from 1 to 2/,
    );
    expect(await refused({ objective: { cost: "1", fun: "2" } as never })).toMatch(/a weight of "fun"/);
    expect(await refused({ stage: "someday" as never })).toMatch(/stage: found "someday".*choose/);
    expect(await refused({ objective: { mass: "3" } })).toMatch(/a weight of mass without a unit/);
    expect(await refused({ objective: { mass: "3/mm" } })).toMatch(/"mm" as the unit of mass/);
    expect(await refused({ objective: { margin: "3/kg" } })).toMatch(/a unit in the weight of margin/);
    expect(await refused({ objective: { cost: "-1" } })).toMatch(/"-1" as the weight of cost/);
    expect(await refused({ objective: {} })).toMatch(/weights of nothing/);
    expect(await refused({ from: { format: "else" } })).toMatch(/no result of a search/);
    expect(await refused({ from: await search({ ...options, best: 2 }) })).toMatch(
      /a result of another search/,
    );
  });

  it("judges what a kept result holds anew, so that a changed file brings nothing in", async () => {
    const whole = await search(options);
    const forged = structuredClone(whole) as { best: { parts: { id: string }[]; cost?: number }[] };
    forged.best[0]!.parts[0]!.id = "S-3";
    forged.best[0]!.cost = 0;
    expect(await ids({ from: forged })).toEqual(["S-1"]);
  });

  it("ends at the next breath when it is stopped", async () => {
    const lists = [
      ...["crankshaft", "connectingRod", "piston", "camshaft", "headGasket"].map((part) => {
        const file = new URL(`../../../demo/parts/${part}.csv`, import.meta.url);
        return readPartsListText(readFileSync(file, "utf8"), `${part}.csv`);
      }),
    ];
    let told = 0;
    const signal = { aborted: false };
    const result = await search({
      ...options,
      candidates: lists,
      countAll: true,
      signal,
      onProgress: ({ share, result }) => {
        told += 1;
        expect(share).toBeLessThan(1);
        expect(result().complete).toBe(false);
        signal.aborted = true;
      },
    });
    expect(told).toBe(1);
    expect(result).toMatchObject({ complete: false });
    expect(result.place!.length).toBeGreaterThan(0);
  });
});

describe("a build with parts of lists", () => {
  it("has the fields of the part in place of the old ones, but for what the list keeps", () => {
    const written = withParts(text, [{ part: "crankshaft", id: "S-3" }], [shafts]);
    expect(written).toContain("use: circuit");
    const { values } = readBuildText(written) as Build;
    const paths = [...values.keys()].filter((path) => path.startsWith("crankshaft."));
    expect(paths.sort()).toEqual(["crankshaft.originalStroke", "crankshaft.stroke"]);
    expect(values.get("crankshaft.stroke")).toEqual(shafts.parts[2]!.values.get("crankshaft.stroke"));
    expect(() => withParts(text, [{ part: "crankshaft", id: "S-9" }], [shafts])).toThrow(/the id "S-9"/);
  });
});

describe("what code without types may ask", () => {
  it.each([
    [{ front: ["x"] }, /front "x": expected "cost" or/],
    [{ demand: "hold" }, /demand "hold": expected false or true or "known"/],
    [{ demand: 1 }, /demand 1: expected/],
    [{ candidates: [{ part: "crankshaft", parts: [{ id: "S", stroke: "88 mm" }] }] }, /readPartsListText/],
    [{ candidates: [undefined] }, /readPartsListText/],
  ])("%o is refused", async (more, message) =>
    expect(await refused(more as unknown as Partial<SearchOptions>)).toMatch(message),
  );
});
