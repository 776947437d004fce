import { describe, expect, it } from "vitest";
import { fields } from "../../read/fieldCatalog.ts";
import { changesOf, pathsNamed } from "./changesOf.ts";
import { castings, type FieldGroup, fieldChanges } from "./fieldChanges.ts";
import { machiningReach, reachedPaths } from "./machiningReach.ts";
import { works } from "./works.ts";

/** Names that are no dimension's, and names that stand twice. */
function faults(groups: readonly FieldGroup[]) {
  const named = groups.map(pathsNamed);
  const names = named.flatMap((group) => [...group.keys()]);
  return {
    counted: names.length,
    strangers: named.flatMap((group) =>
      [...group].filter(([, paths]) => paths.length === 0).map(([name]) => name),
    ),
    twice: [
      ...names.filter((name, index) => names.indexOf(name) !== index),
      ...groups.flatMap((group) => (new Set(group.names).size < group.names.length ? group.names : [])),
    ],
  };
}

describe("the table of what changes a dimension", () => {
  it("names dimensions that there are, each once", () => {
    const { counted, strangers, twice } = faults(fieldChanges);
    expect(strangers).toEqual([]);
    expect(twice).toEqual([]);
    expect(counted).toBeGreaterThan(150);
  });
  it("is seen to be wrong where a name is misspelled or repeated", () => {
    const broken = [
      { changes: {}, names: ["block.bohre", "*.expansion"] },
      { changes: {}, names: ["*.expansion"] },
    ];
    expect(faults(broken)).toMatchObject({ strangers: ["block.bohre"], twice: ["*.expansion"] });
  });
  it.each([
    ["connectingRod.length", { up: "part", down: "part" }],
    ["block.bore", { up: "machine" }],
    ["block.deckHeight", { down: "machine" }],
    ["block.cylinderAxisOffset", {}],
    ["inletValve.tilt", {}],
    ["crankshaft.stroke", { up: "part", down: "part" }],
    ["headGasket.compressedThickness", { up: "shim", down: "shim" }],
    ["targets.speed", { up: "limit", down: "limit" }],
    ["targets.torque", { up: "limit", down: "limit" }],
    ["starter.torque", { up: "part", down: "part" }],
    ["rodBolt.torque", { up: "set", down: "set" }],
    ["block.boreTaper", { down: "machine" }],
    ["piston.expansion", {}],
    ["conditions.pistonTemperature", {}],
    ["targets.rodClearance", {}],
    ["block.cylinders", {}],
    ["block.material", {}],
    ["no.such", {}],
  ])("%s", (path, changes) => {
    expect(changesOf(path)).toEqual(changes);
  });
  it("offers no other casting, and knows no casting that is no part", () => {
    const parts = new Set([...fields.values()].map(({ part }) => part?.key));
    for (const casting of castings) {
      expect(parts).toContain(casting);
      const works = [...fields.keys()]
        .filter((path) => path.startsWith(`${casting}.`))
        .flatMap((path) => Object.values(changesOf(path)));
      expect(works).toContain("machine");
      expect(works).not.toContain("part");
    }
  });
  it("gives no work to what nobody can choose, and only kinds of work that there are", () => {
    const dimensions = [...fields.values()].filter(({ spec }) => spec.kind === "dimension");
    const kinds = new Set(dimensions.flatMap(({ path }) => Object.values(changesOf(path))));
    expect([...kinds].sort()).toEqual(Object.keys(works).sort());
    const conditions = dimensions.filter(
      ({ part }) => part?.key === "conditions" || part?.key === "assembly",
    );
    expect(conditions.length).toBeGreaterThan(20);
    for (const { path } of conditions) expect(changesOf(path), path).toEqual({});
  });
});

describe("how far machining goes", () => {
  it("is told of dimensions that are machined, in the way in which they are", () => {
    for (const path of reachedPaths) {
      const ways = ([1, -1] as const).map((way) => machiningReach(path, way));
      expect(ways.filter((one) => one !== undefined && one > 0).length, path).toBe(1);
    }
    expect(reachedPaths.length).toBeGreaterThan(20);
  });
  it("is told of every dimension of the hardest castings and journals that a cutter moves", () => {
    expect([machiningReach("block.bore", 1), machiningReach("block.bore", -1)]).toEqual([0.003, undefined]);
    expect([machiningReach("block.deckHeight", -1), machiningReach("connectingRod.length", 1)]).toEqual([
      0.003,
      undefined,
    ]);
  });
});
