import { describe, expect, it } from "vitest";
import { checkDimensions, checkFormulas } from "./formulaChecks.test-support.ts";
import { checkHot } from "./hotValues.test-support.ts";
import { type Quantity, quantity } from "./Quantity.ts";
import {
  checkExamples,
  checkGraph,
  checkShapes,
  checkSources,
  checkSymbols,
  type Findings,
} from "./quantityCatalog.test-support.ts";
import { checkScaling } from "./scalingChecks.test-support.ts";
import { checkReasons } from "./withoutFormula.test-support.ts";

const DRAWS = 50;

/** A sound quantity, to be broken in one respect. */
const sound = quantity({
  id: "halfBore",
  name: "Half bore",
  symbol: "R",
  unit: "mm",
  decimals: 2,
  system: "compression",
  meaning: "Half the bore.",
  inputs: { B: "block.bore" },
  formula: "B / 2",
  compute: ({ B }) => B / 2,
  shape: "monotone",
  valid: "round bores",
  sources: [{ id: "definition" }],
  examples: [{ given: { B: "86 mm" }, expect: "43.00 mm" }],
});
const catalogOf = (...all: readonly Quantity[]) => new Map(all.map((one) => [one.id, one]));
const broken = (change: Partial<Quantity>) => catalogOf({ ...sound, ...change });

describe("the checks themselves", () => {
  const all: Readonly<Record<string, (catalog: ReadonlyMap<string, Quantity>) => Findings>> = {
    graph: checkGraph,
    sources: (catalog) => checkSources(catalog, new Set(["definition"])),
    examples: checkExamples,
    formulas: (catalog) => checkFormulas(catalog, DRAWS),
    dimensions: checkDimensions,
    symbols: checkSymbols,
    shapes: checkShapes,
  };
  it.each(Object.entries(all))("%s: passes a sound quantity", (_, check) => {
    const { checked, faults } = check(catalogOf(sound));
    expect(faults).toEqual([]);
    expect(checked).toBeGreaterThan(0);
  });
  it.each(Object.entries(all))("%s: has looked at nothing when there is nothing", (_, check) =>
    expect(check(new Map())).toEqual({ checked: 0, faults: [] }),
  );

  const twoWays = [{ needs: [] }, { needs: [] }];
  const upDown = (B: number) => Math.sin(100 * B);
  it.each<[string, string, ReadonlyMap<string, Quantity>, RegExp]>([
    ["an unknown field", "graph", broken({ inputs: { B: "block.boar" } }), /no number block\.boar/],
    [
      "a word for a number",
      "graph",
      broken({ inputs: { B: "block.material" } }),
      /no number block\.material/,
    ],
    ["a number for a choice", "graph", broken({ choices: { m: "block.bore" } }), /no choice/],
    [
      "a place that a field does not have",
      "graph",
      broken({ choices: { m: "block.bore.place" } }),
      /no choice/,
    ],
    ["a number for a table", "graph", broken({ tables: { o: "block.bore" } }), /no table/],
    [
      "a way that needs what is no input",
      "graph",
      broken({ routes: [{ needs: ["B"] }, { needs: ["D"] }] }),
      /needs D, which is no input/,
    ],
    ["a quantity of itself", "graph", broken({ inputs: { B: "halfBore" } }), /rests on itself/],
    [
      "a ring of two",
      "graph",
      catalogOf({ ...sound, inputs: { R: "other" } }, { ...sound, id: "other", inputs: { R: "halfBore" } }),
      /other: rests on itself/,
    ],
    ["an unlisted source", "sources", broken({ sources: [{ id: "hearsay" }] }), /no source hearsay/],
    [
      "a wrong example",
      "examples",
      broken({ examples: [{ given: { B: "86 mm" }, expect: "43.02 mm" }] }),
      /43\.02/,
    ],
    [
      "too few decimals",
      "examples",
      broken({ examples: [{ given: { B: "86 mm" }, expect: "43 mm" }] }),
      /0 decimals/,
    ],
    ["a formula that says otherwise", "formulas", broken({ formula: "B / 2.00000001" }), /the formula gives/],
    [
      "an input left out of the formula",
      "formulas",
      broken({
        inputs: { B: "block.bore", H: "block.deckHeight" },
        examples: [{ given: { B: "86 mm", H: "220 mm" }, expect: "43.00 mm" }],
      }),
      /H is not in/,
    ],
    [
      "a formula of one case that says otherwise",
      "formulas",
      broken({ formula: undefined, method: "Half.", routes: twoWays, cases: { 1: "B / 2", 2: "B / 3" } }),
      /the formula gives/,
    ],
    [
      "a case left out",
      "formulas",
      broken({ formula: undefined, method: "Half.", routes: twoWays, cases: { 1: "B / 2" } }),
      /has cases 1, not 1, 2/,
    ],
    [
      "a case with a wrong unit",
      "dimensions",
      broken({ formula: undefined, method: "Half.", routes: twoWays, cases: { 1: "B / 2", 2: "B^2 / 2" } }),
      /the formula gives 2,0,0,0/,
    ],
    ["no draw that can be", "formulas", broken({ compute: () => Number.NaN }), /only 0 draws/],
    ["a wrong unit", "dimensions", broken({ unit: "cm2" }), /the formula gives 1,0,0,0/],
    ["apples and pears", "dimensions", broken({ formula: "B + B^2" }), /unlike terms/],
    ["the sine of a length", "dimensions", broken({ formula: "B * sin(B)" }), /sin of something/],
    ["a third root", "dimensions", broken({ formula: "(B^3)^(1/3)" }), /power/],
    ["an unknown name", "dimensions", broken({ formula: "D / 2" }), /not an input/],
    ["two with one symbol", "symbols", catalogOf(sound, { ...sound, id: "other" }), /another quantity/],
    ["an input by another symbol", "symbols", broken({ inputs: { D: "block.bore" } }), /is called D, not B/],
    ["an unknown unit", "symbols", broken({ unit: "furlong" }), /no unit/],
    ["a fraction of a decimal", "symbols", broken({ decimals: 1.5 }), /1\.5 decimals/],
    ["a turn", "shapes", broken({ compute: ({ B }) => upDown(B!) }), /turns in B/],
    [
      "rest on one that turns",
      "shapes",
      catalogOf(
        { ...sound, shape: "guarded" },
        {
          ...sound,
          id: "other",
          inputs: { R: "halfBore" },
          examples: [{ given: { R: "43 mm" }, expect: "21.50 mm" }],
          compute: ({ R }) => R! / 2,
        },
      ),
      /other: rests on halfBore/,
    ],
  ])("finds %s", (_, name, catalog, text) => expect(all[name]!(catalog).faults.join("\n")).toMatch(text));
});

describe("the check of reasons to be without a formula", () => {
  const inWords = catalogOf({ ...sound, formula: undefined, method: "Half of it." });
  it.each<[string, ReadonlyMap<string, Quantity>, Parameters<typeof checkReasons>[1], RegExp]>([
    ["none", inWords, {}, /has 0 reasons/],
    ["two", inWords, { this: ["halfBore"], that: ["halfBore"] }, /has 2 reasons/],
    ["one for a quantity with a formula", catalogOf(sound), { this: ["halfBore"] }, /needs no reason/],
    ["one for nothing", inWords, { this: ["halfBore", "other"] }, /other: no quantity/],
  ])("finds %s", (_, catalog, given, text) =>
    expect(checkReasons(catalog, given).faults.join("\n")).toMatch(text),
  );
  it("passes one reason", () =>
    expect(checkReasons(inWords, { this: ["halfBore"] })).toEqual({ checked: 1, faults: [] }));
});

describe("the check of units where there is no formula", () => {
  const inWords = (change: Partial<Quantity>) =>
    catalogOf({ ...sound, formula: undefined, method: "Half of it.", ...change });
  /** Half the bore and a length of its own, such as a gap that everyone leaves. */
  const withLength = inWords({
    compute: ({ B }) => B! / 2 + 0.001,
    examples: [{ given: { B: "86 mm" }, expect: "44.00 mm" }],
  });
  const asFactor = inWords({ compute: ({ B }) => (B! * B!) / 2 });
  const because = "a length of its own";

  it("passes one that balances, and one that says what it keeps", () => {
    expect(checkScaling(inWords({}), {})).toEqual({ checked: 1, faults: [] });
    expect(checkScaling(asFactor, { halfBore: { because, constant: [-1, 0, 0, 0] } }).faults).toEqual([]);
    expect(checkScaling(withLength, { halfBore: { because, within: 0.05 } }).faults).toEqual([]);
    expect(checkScaling(asFactor, { halfBore: { because, except: ["length"] } }).faults).toEqual([]);
  });
  it.each<[string, ReadonlyMap<string, Quantity>, Parameters<typeof checkScaling>[1], RegExp]>([
    ["a wrong unit", inWords({ unit: "cm2" }), {}, /-1\.0000 powers of length/],
    ["a wrong power", asFactor, {}, /1\.0000 powers of length/],
    [
      "a wrong power beside what is said",
      asFactor,
      { halfBore: { because, within: 0.05 } },
      /powers of length/,
    ],
    ["a constant that is not said", withLength, {}, /powers of length/],
    ["the wrong constant", asFactor, { halfBore: { because, constant: [1, 0, 0, 0] } }, /powers of length/],
    ["a stale word", inWords({}), { halfBore: { because, within: 0.05 } }, /stale/],
    ["a word for one with a formula", catalogOf(sound), { halfBore: { because } }, /without a formula/],
    ["a word for none", inWords({}), { other: { because } }, /other: no quantity/],
    ["nothing to scale", inWords({ compute: () => 0 }), {}, /nothing|anything to scale/],
  ])("finds %s", (_, catalog, said, text) =>
    expect(checkScaling(catalog, said).faults.join("\n")).toMatch(text),
  );
});

describe("the check of hot values", () => {
  const cold = { ...sound, id: "gap", name: "Gap", symbol: "g", hot: { quantity: "gapHot" } };
  const hot: Quantity = {
    ...sound,
    id: "gapHot",
    name: "Gap, hot",
    symbol: "g_h",
    inputs: { T_b: "conditions.blockTemperature" },
    hot: undefined,
  };
  const reason = "both parts are of one metal and equally warm all the time";
  it("passes a gap with a partner, one with a reason, and a size that is said to be none", () => {
    expect(checkHot(catalogOf(cold, hot), {})).toEqual({ checked: 1, faults: [] });
    expect(checkHot(broken({ hot: { coldOnly: reason } }), {})).toEqual({ checked: 1, faults: [] });
    expect(checkHot(catalogOf(sound), { "a size": ["halfBore"] })).toEqual({ checked: 0, faults: [] });
  });
  it.each<[string, ReadonlyMap<string, Quantity>, Parameters<typeof checkHot>[1], RegExp]>([
    ["a gap that says nothing", catalogOf(sound), {}, /halfBore: has no hot value and no reason/],
    [
      "a share that is named after a gap and says nothing",
      broken({ name: "Gap over bore", unit: "1" }),
      {},
      /has no hot value/,
    ],
    ["a partner that is not there", catalogOf(cold), {}, /gap: no quantity gapHot/],
    [
      "a partner that no heat reaches",
      catalogOf(cold, { ...hot, inputs: sound.inputs }),
      {},
      /no temperature/,
    ],
    ["a partner in another unit", catalogOf(cold, { ...hot, unit: "N" }), {}, /gapHot is in N/],
    ["a reason without words", broken({ hot: { coldOnly: "it is small" } }), {}, /without a reason/],
    [
      "a gap that is also said to be none",
      broken({ hot: { coldOnly: reason } }),
      { "a size": ["halfBore"] },
      /said twice/,
    ],
    ["a word for what is no length", broken({ unit: "N" }), { force: ["halfBore"] }, /needs no word/],
    ["a word for nothing", catalogOf(cold, hot), { "a size": ["other"] }, /other: no quantity/],
  ])("finds %s", (_, catalog, given, text) =>
    expect(checkHot(catalog, given).faults.join("\n")).toMatch(text),
  );
});
