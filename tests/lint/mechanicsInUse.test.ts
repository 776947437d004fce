import { describe, expect, it } from "vitest";
import { because } from "../../packages/mechanics/src/because.test-support.ts";
import * as mechanics from "../../packages/mechanics/src/index.ts";
import { reachedNames, type Sources, sourcesUnder } from "./mechanicsInUse.ts";

/** Public functions that no quantity and no trace reaches, and why they stay. */
const reasons: Readonly<Record<string, string>> = {
  ...because(
    "one angle, place or state of what a quantity takes the extreme of, for whoever steps through it by hand",
    `burntShare crankTorque crankpinLoad pistonToValveAxialAt rodAxialForce sideThrust singleCylinderResidualAt
    squishVelocity wallGasSpeed wallHeatTransfer shortBearingMobility runClosedCycle pressureTraceForHeat
    shortBearingLoad stateFactor cycleValue`,
  ),
  ...because(
    "turns round a function that a quantity uses; the solver of sizes finds such values from any quantity",
    `torqueForPreload preloadForYieldUse powerFromMeanEffectivePressure heldPlateThickness heatForPeakPressure
    shortBearingEccentricity`,
  ),
  ...because(
    "a second way, exact or by another book, to which tests hold the one in use",
    `wedgeThreadTorque stressAreaUnified thickCylinderHoopStress holzerResidual overlapStiffness
    shortBearingSommerfeld shortBearingAttitude finiteBearingLoad finiteFilm frictionVariable petroffPower
    waltherViscosity rodToCylinderProfile steppedShaftStiffness equivalentShaftLength leastFilmOverCycle
    mobilityAt`,
  ),
  ...because(
    "solves the films of which the table in use is made, when that is written anew",
    "reynoldsFilm meshAround",
  ),
  ...because(
    "sums up at once what quantities of the catalog show step by step",
    "runningSquishGap stackGrowth valveEvents boltServiceLoad beamCompression worstCaseAndRss",
  ),
  ...because(
    "sweeps one kind of obstacle; the quantities sweep theirs, with where it stands, by one way for all",
    "rodToPoint rodToRail",
  ),
  ...because(
    "a camshaft moved on the crankshaft: the build states its centres as they are timed",
    "shiftLiftCurve",
  ),
  ...because("a guide for bearings under a steady load, which those of an engine are not", "trumplerFilm"),
  ...because(
    "asks for what no part of a build states: a proof load, the altitude, the density at 15 °C, a housing that gives way alone",
    "overloadReserve standardAtmosphere oilDensity housingGrowth",
  ),
  ...because("the build states it, and the air demand goes the other way round", "volumetricEfficiency"),
  ...because(
    "the area belongs to a flow model that no quantity has: the ratio of lift to diameter is judged",
    "curtainArea",
  ),
  ...because(
    "the thread of the bolt, which strips after the softer metal that it is screwed into",
    "boltThreadStripLoad",
  ),
};

/** What there was when this was last raised. */
const LEAST = { functions: 384, used: 331 };

/** What is wrong, and how many functions quantities and traces reach. */
function faultsOf(functions: readonly string[], reached: ReadonlySet<string>, given: typeof reasons) {
  return {
    used: functions.filter((name) => reached.has(name)).length,
    faults: [
      ...functions.flatMap((name) => {
        if (reached.has(name))
          return given[name] === undefined ? [] : [`${name}: is used and needs no reason`];
        if (given[name] === undefined) return [`${name}: no quantity uses it and no reason is given`];
        return given[name].length > 30 ? [] : [`${name}: an empty reason`];
      }),
      ...Object.keys(given).flatMap((name) => (functions.includes(name) ? [] : [`${name}: no function`])),
      ...(functions.length === 0 ? ["no functions"] : []),
    ],
  };
}

it("every public function of mechanics is used by a quantity or a trace, or says why it is there", () => {
  const users = new Map(
    ["derive", "trace"].flatMap((folder) => [...sourcesUnder(`packages/core/src/${folder}`)]),
  );
  const reached = reachedNames(sourcesUnder("packages/mechanics/src"), users, "@trialfit/mechanics");
  const functions = Object.entries(mechanics).flatMap(([name, value]) =>
    typeof value === "function" ? [name] : [],
  );
  const { used, faults } = faultsOf(functions, reached, reasons);
  expect(faults).toEqual([]);
  expect(functions.length).toBeGreaterThanOrEqual(LEAST.functions);
  expect(used).toBeGreaterThanOrEqual(LEAST.used);
});

describe("the check", () => {
  const library: Sources = new Map([
    [
      "/lib/area.ts",
      'import { square } from "./square.ts";\nexport const area = (r: number) => 3 * square(r);',
    ],
    [
      "/lib/square.ts",
      "const two = 2;\nexport function square(x: number) { return x ** two; }\nexport const cube = 3;",
    ],
  ]);
  const reachedBy = (text: string) => [...reachedNames(library, new Map([["/user.ts", text]]), "lib")];
  it("follows what is imported through what it reads, and nothing else", () => {
    expect(reachedBy('import { area as of } from "lib";')).toEqual(["area", "square", "two"]);
    expect(reachedBy('import { square } from "lib";')).toEqual(["square", "two"]);
    expect(reachedBy('import { area } from "other"; const cube = 1; area(cube);')).toEqual([]);
    expect(() => reachedBy("const = 1;")).toThrow();
  });
  it("knows a parameter from what is imported under the same name", () => {
    const shadowed: Sources = new Map([
      ...library,
      [
        "/lib/area.ts",
        'import { square } from "./square.ts";\nexport const area = (square: number) => square;',
      ],
    ]);
    const user = new Map([["/user.ts", 'import { area } from "lib";']]);
    expect([...reachedNames(shadowed, user, "lib")]).toEqual(["area"]);
  });
  it("asks for a reason that is one, and for none too many", () => {
    const reason = "a second way to which tests hold the one in use";
    expect(faultsOf(["area", "cube"], new Set(["area"]), { cube: reason })).toEqual({ used: 1, faults: [] });
    expect(faultsOf(["cube"], new Set(), {}).faults).toEqual([
      "cube: no quantity uses it and no reason is given",
    ]);
    expect(faultsOf(["cube"], new Set(), { cube: "so" }).faults).toEqual(["cube: an empty reason"]);
    expect(faultsOf(["area"], new Set(["area"]), { area: reason }).faults).toHaveLength(1);
    expect(faultsOf([], new Set(), { gone: reason }).faults).toEqual(["gone: no function", "no functions"]);
  });
});
