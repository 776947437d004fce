import { describe, expect, it } from "vitest";
import { hotShare } from "../derive/hotShare.ts";
import { withDefaults } from "../derive/withDefaults.ts";
import { fields } from "../read/fieldCatalog.ts";
import { readBuildText } from "../read/readBuild.ts";
import { fastenerMetals, pinSteels, pistonAlloys, rodAlloys } from "./alloys.ts";
import { type Strength, type StrengthKind, strengths } from "./strengths.ts";

const kinds: readonly StrengthKind[] = ["yield", "tensile", "fatigue"];
const KPSI = 6.894757;

describe("strengths by temperature", () => {
  const all: readonly (readonly [string, Strength])[] = Object.entries(strengths);
  it("has alloys to look at", () => expect(all.length).toBeGreaterThanOrEqual(13));
  it.each(all)("%s: begins at 20 °C, rises in temperature and never in strength", (_, alloy) => {
    const { temperatures } = alloy;
    expect(temperatures[0]).toBe(20);
    expect([...temperatures].sort((a, b) => a - b)).toEqual(temperatures);
    expect(new Set(temperatures).size).toBe(temperatures.length);
    for (const kind of kinds) {
      expect(alloy[kind]).toHaveLength(temperatures.length);
      for (const [index, value] of alloy[kind].entries()) {
        expect(value).toBeGreaterThan(0);
        expect(value).toBeLessThanOrEqual(alloy[kind][index - 1] ?? value);
      }
    }
  });
  it.each(all)("%s: yields below its tensile strength and tires below its yield", (_, alloy) => {
    for (const index of alloy.temperatures.keys()) {
      expect(alloy.yield[index]).toBeLessThan(alloy.tensile[index]!);
      expect(alloy.fatigue[index]).toBeLessThan(alloy.yield[index]!);
    }
  });
  it.each(all)("%s: says where it comes from and for how long an aluminium alloy was hot", (id, alloy) => {
    expect(alloy.source).toMatch(/from memory/);
    expect(alloy.spread).toBeGreaterThan(0.02);
    expect(alloy.cycles).toBeGreaterThanOrEqual(1e6);
    expect(alloy.hours !== undefined, id).toBe(id.includes("aluminium") && !id.startsWith("titanium"));
  });
  // A printed table of typical properties of wrought alloys: 2618-T61, tensile 64 ksi, yield 54 ksi.
  it.each([
    ["tensile", 64],
    ["yield", 54],
  ] as const)("2618-T61 at 20 °C: %s strength %d ksi as printed", (kind, ksi) =>
    expect(Math.abs(strengths["aluminium-2618"][kind][0] - ksi * KPSI)).toBeLessThanOrEqual(0.5),
  );
  it("is used by a part, all of it", () => {
    const used = [rodAlloys, pistonAlloys, pinSteels, fastenerMetals].flatMap((one) => Object.values(one));
    expect([...new Set<string>(used)].sort()).toEqual(Object.keys(strengths).sort());
  });
});

describe("words of the parts", () => {
  it.each([
    ["connectingRod.alloy", rodAlloys],
    ["piston.alloy", pistonAlloys],
    ["pistonPin.steel", pinSteels],
    ["rodBolt.material", fastenerMetals],
  ] as const)("%s offers just the alloys that have strengths", (path, words) => {
    const spec = fields.get(path)!.spec;
    expect(spec.kind === "choice" && Object.keys(spec.options).sort()).toEqual(Object.keys(words).sort());
  });
});

describe("what is left of a strength", () => {
  const at = (celsius: number) => celsius + 273.15;
  it("is all of it at 20 °C and the table's ratio at its points", () => {
    let checked = 0;
    for (const [word, id] of Object.entries(rodAlloys)) {
      const alloy: Strength = strengths[id];
      for (const kind of kinds)
        for (const [index, celsius] of alloy.temperatures.entries()) {
          const left = hotShare(rodAlloys, word, kind, at(celsius));
          expect(left).toBeCloseTo(alloy[kind][index]! / alloy[kind][0]!, 12);
          checked += 1;
        }
    }
    expect(checked).toBeGreaterThan(100);
  });
  it("is not guessed beyond the table, nor for a word that it does not hold", () => {
    expect(() => hotShare(rodAlloys, "7075", "yield", at(201))).toThrow(
      /^temperature: found 474\.15, expected/,
    );
    expect(() => hotShare(rodAlloys, "7075", "yield", at(19))).toThrow(RangeError);
    expect(() => hotShare(rodAlloys, "wood", "yield", at(20))).toThrow(/^alloy: found wood, expected one of/);
  });
});

describe("strengths that a build leaves out", () => {
  const values = (rod: string) =>
    withDefaults(
      readBuildText(
        `trialfit: "1"\nname: Invented\nconnectingRod: { ${rod} }\npiston: { alloy: "4032" }\n`,
        "x",
      ),
    );
  const found = (rod: string, path: string) => {
    const value = values(rod).get(path);
    return value?.kind === "dimension" ? [value.nominal / 1e6, value.provenance] : value;
  };
  it("follow the alloy", () => {
    expect(found("alloy: powder-steel", "connectingRod.yieldStrength")).toEqual([620, "assumed"]);
    expect(found("alloy: powder-steel", "piston.yieldStrength")).toEqual([317, "assumed"]);
    expect(found("alloy: powder-steel", "piston.fatigueStrength")).toEqual([110, "assumed"]);
  });
  it("of titanium follow the metal alone; those of steels, which differ too much, do not", () => {
    expect(found("material: titanium", "connectingRod.yieldStrength")).toEqual([880, "assumed"]);
    expect(found("material: steel", "connectingRod.yieldStrength")).toBeUndefined();
  });
  it("give way to what is entered", () =>
    expect(found("alloy: powder-steel, yieldStrength: 700 MPa", "connectingRod.yieldStrength")).toEqual([
      700,
      "data-sheet",
    ]));
});
