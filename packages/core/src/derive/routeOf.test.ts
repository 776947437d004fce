import { describe, expect, it } from "vitest";
import { evaluate } from "../evaluate.ts";
import { readBuildText } from "../read/readBuild.ts";
import { deriveAll } from "./deriveAll.ts";
import { quantity } from "./Quantity.ts";
import { withDefaults } from "./withDefaults.ts";

const common = {
  name: "Depth by one way or another",
  unit: "mm",
  decimals: 2,
  system: "compression",
  meaning: "Only here.",
  shape: "monotone",
  valid: "always",
  sources: [{ id: "definition" }],
  examples: [{ given: {}, expect: "1.00 mm" }],
} as const;

const depth = quantity({
  ...common,
  id: "depth",
  symbol: "x",
  inputs: {
    H: "block.deckHeight",
    l: "connectingRod.length",
    h_c: "piston.compressionHeight",
    B: "block.bore",
  },
  method: "Deck height less rod and piston where both are there, half the bore otherwise.",
  routes: [{ needs: ["H", "l", "h_c"] }, { needs: ["B"], assumes: "half the bore stands in for the depth" }],
  compute: ({ H, l, h_c, B }, _words, _tables, route) => (route === 0 ? H - l - h_c : B / 2),
});
const twice = quantity({
  ...common,
  id: "twice",
  symbol: "y",
  inputs: { x: "depth" },
  formula: "2 * x",
  compute: ({ x }) => 2 * x,
});
const catalog = new Map([depth, twice].map((one) => [one.id, one]));

const derive = (body: string, id = "depth") => {
  const build = readBuildText(`trialfit: "1"\nname: x\n${body}`, "b.yaml");
  return deriveAll(withDefaults(build), catalog, [id]).get(id);
};
const block = "block: { bore: 80 mm ± 0, deckHeight: 200 mm ± 0 }\n";
const whole = "connectingRod: { length: 150 mm ± 0 }\npiston: { compressionHeight: 30 mm ± 0 }\n";

describe("ways to a value", () => {
  it("takes the surest whole way, and says nothing is taken for granted", () => {
    const found = derive(block + whole);
    expect(found).toMatchObject({ state: "value", takenFor: [] });
    expect(found?.state === "value" && found.nominal).toBeCloseTo(0.02, 12);
    expect(found?.state === "value" && Object.keys(found.inputs)).toEqual(["H", "l", "h_c"]);
  });
  it("takes the next way where the first lacks something, and what rests on it says so", () => {
    const assumes = ["half the bore stands in for the depth"];
    expect(derive(block)).toMatchObject({ nominal: 0.04, takenFor: assumes });
    expect(derive(block, "twice")).toMatchObject({ nominal: 0.08, takenFor: assumes });
  });
  it("names what the nearest way lacks, and only that", () => {
    expect(derive("block: { deckHeight: 200 mm }\nconnectingRod: { length: 150 mm }")).toMatchObject({
      state: "missing",
      missing: ["piston.compressionHeight"],
    });
    expect(derive("")).toMatchObject({ missing: ["block.bore"] });
  });
  it("refuses several ways with one formula", () =>
    expect(() =>
      quantity({
        ...common,
        id: "no",
        symbol: "z",
        inputs: { B: "block.bore" },
        formula: "B",
        routes: [{ needs: [] }, { needs: ["B"] }],
        compute: ({ B }) => B,
      }),
    ).toThrow(/need a method/));
});

describe("defaults that follow a word", () => {
  const assumptions = async (body: string) => {
    const report = await evaluate(readBuildText(`trialfit: "1"\nname: x\n${body}`, "b.yaml"));
    return report.assumptions.filter(({ path }) => path === "block.expansion");
  };
  it("stand once the word is there, with the reason of that word", async () => {
    expect(await assumptions("block: { material: grey-iron }")).toEqual([
      expect.objectContaining({
        text: "11e-6 1/K ± 0.6e-6",
        because: expect.stringMatching(/grey cast iron/),
      }),
    ]);
    expect((await assumptions("block: { material: cast-aluminium }"))[0]?.text).toMatch(/21\.5e-6/);
  });
  it("do not stand without it, nor against a value that is given", async () => {
    expect(await assumptions("block: { bore: 80 mm }")).toEqual([]);
    expect(await assumptions("block: { material: grey-iron, expansion: 10.5 um/(m K) }")).toEqual([]);
  });
});
