import { fc, test } from "@fast-check/vitest";
import { describe, expect, it } from "vitest";
import { quantities } from "../../derive/generated/quantities.ts";
import { readBuild } from "../../read/readBuild.ts";
import { readPartsListText } from "../lists/readPartsListText.ts";
import { search } from "../search/search.ts";
import { readAims } from "./readAims.ts";
import { solve } from "./solve.ts";
import { missOf } from "./Wanted.ts";

const block = { layout: "inline", cylinders: "4", bore: "86 mm", deckHeight: "225 mm" };
const engine = (aims: Readonly<Record<string, string>>, compressionHeight: string) =>
  readBuild({
    trialfit: "1",
    name: "an engine of our own",
    block,
    crankshaft: { stroke: "88 mm" },
    connectingRod: { length: "142.5 mm" },
    piston: { compressionHeight },
    aims,
  });
const isMet = (text: string, deckClearance: number): boolean => {
  const [aim] = readAims(engine({ deckClearance: text }, "38 mm"), quantities);
  return Math.abs(missOf(aim!, deckClearance / 1000)) <= 1;
};

describe("what meets an aim", () => {
  it.each([
    ["at least 0.1 mm", [0.1, 0.1 - 1e-12, 0.3], [0.0999, 0.0995]],
    ["at most 0.1 mm", [0.1, 0.1 + 1e-12, -3], [0.1001, 0.1005]],
    ["at most 0.1 mm ± 0.02", [0.12, 0.1], [0.121]],
    ["-0.3 mm to -0.1 mm", [-0.3, -0.1, -0.1 + 1e-12], [-0.301, -0.0999]],
    ["0.2 mm ± 0.1", [0.1, 0.3, 0.3 + 1e-12], [0.0999, 0.3001]],
    ["-0.2 mm +0.15/-0.01", [-0.05, -0.1, -0.21], [-0.0499, -0.2101]],
    ["0.2 mm +0.05/-0", [0.2, 0.25], [0.1999, 0.2501]],
  ])("%s", (text, met, missed) => {
    for (const value of met) expect(isMet(text, value), `${value}`).toBe(true);
    for (const value of missed) expect(isMet(text, value), `${value}`).toBe(false);
  });

  test.prop([fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 20 })])(
    "both ends of a range belong to it, whatever they are rounded to",
    (low, width) => {
      const text = `${low / 10} mm to ${(low + width) / 10} mm`;
      for (const end of [low / 10, (low + width) / 10, low * 0.1, (low + width) * 0.1])
        expect(isMet(text, end), text).toBe(true);
    },
  );
});

describe("an aim that is met at its very end", () => {
  const heights = ["38.5", "38.6", "38.7", "38.8", "38.9"];
  const list = readPartsListText(
    `# part: piston\nid,compressionHeight (mm),price (EUR)\n${heights.map((one, index) => `${"ABCDE"[index]},${one},${index + 1}`).join("\n")}\n`,
    "pistons.csv",
  );
  const found = async (deckClearance: string) => {
    const fixed = engine({ deckClearance }, "38 mm");
    const { best } = await search({ fixed, candidates: [list], stage: "choose", countAll: true });
    return best.map(({ parts }) => parts[0]!.id).join("");
  };
  it.each([
    ["-0.3 mm to -0.1 mm", "BCD"],
    ["at most -0.1 mm", "BCDE"],
    ["at least -0.1 mm", "AB"],
    ["-0.2 mm ± 0.1", "BCD"],
    ["-0.2 mm +0.15/-0.01", "BC"],
  ])("%s, by search", async (text, ids) => expect(await found(text)).toBe(ids));

  it("is met by solve as well", async () => {
    const wanted = engine({ deckClearance: "-0.5 mm to -0.3 mm" }, "? 38 mm to 38.8 mm in steps of 0.1 mm");
    expect(await solve(wanted, { rules: [] })).toMatchObject({
      state: "solved",
      fields: [{ text: "38.8 mm" }],
    });
  });

  it("is no class limit that a part is a little beyond", async () => {
    const over = readBuild({
      trialfit: "1",
      name: "a class of our own",
      block: { ...block, bore: "80 mm" },
      crankshaft: { stroke: "? 79.6 mm to 85 mm in steps of 0.1 mm" },
      aims: { engineDisplacement: "at most 1600 cm3" },
    });
    expect((await solve(over, { rules: [] })).state).toBe("conflict");
  });
});
