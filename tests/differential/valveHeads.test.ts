import {
  pistonToValveAxial,
  pistonToValveAxialAt,
  pistonTravel,
  standInLiftCurve,
  valveToBore,
  valveToValve,
} from "@trialfit/mechanics";
import type { Manifold } from "manifold-3d";
import { expect, test } from "vitest";
import { generator } from "./generator.ts";
import { loadSolids } from "./loadSolids.ts";

const micrometre = 1e-6;
const degree = Math.PI / 180;
const FACETS = 240;
/** Half as thick as the heads of the solids are [mm]. */
const THIN = 1e-4;

/** The face of a valve head as a thin disc, in millimetres: its stem leans from the cylinder axis in the plane x, y. */
async function headSolid(
  valve: { across: number; height: number; tilt: number; radius: number },
  lift: number,
): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const [sin, cos] = [Math.sin(valve.tilt), Math.cos(valve.tilt)];
  const [x, y] = [valve.across - lift * sin, valve.height - lift * cos];
  return Manifold.cylinder(2 * THIN, 1e3 * valve.radius, 1e3 * valve.radius, FACETS, true)
    .rotate([90, 0, 0])
    .rotate([0, 0, -valve.tilt / degree])
    .translate([1e3 * x, 1e3 * y, 0]);
}

const curveOf = (random: () => number, side: 1 | -1) =>
  standInLiftCurve({
    greatestLift: 0.009 + 0.004 * random(),
    centre: side * (100 + 14 * random()) * degree,
    longer: { lift: 0.00015, duration: (270 + 30 * random()) * degree },
    shorter: { lift: 0.00127, duration: (225 + 15 * random()) * degree },
  });

test("inlet and exhaust valve: gap between solids, and a whole cycle sampled", {
  timeout: 600_000,
}, async () => {
  const random = generator(515);
  let compared = 0;
  for (let i = 0; i < 14; i++) {
    const tilt = () => (2 + 18 * random()) * degree;
    const inlet = { across: 0.018 + 0.003 * random(), height: 0.003, tilt: tilt(), radius: 0.0165, along: 0 };
    const exhaust = {
      across: -0.016 - 0.003 * random(),
      height: 0.002,
      tilt: tilt(),
      radius: 0.0135,
      along: 0,
    };
    const [inletCurve, exhaustCurve] = [curveOf(random, 1), curveOf(random, -1)];
    const found = valveToValve({
      inlet: { ...inlet, curve: inletCurve },
      exhaust: { ...exhaust, curve: exhaustCurve },
    });
    if (found.clearance < 50 * micrometre) continue;
    const gapAt = async (angle: number) => {
      const one = await headSolid(inlet, inletCurve.at(angle).lift);
      const other = await headSolid({ ...exhaust, tilt: -exhaust.tilt }, exhaustCurve.at(angle).lift);
      return one.minGap(other, 20) / 1e3;
    };
    // Facets lie within their circles, at the corner that faces the other head not at all.
    expect(Math.abs((await gapAt(found.angle)) - found.clearance)).toBeLessThan(2 * micrometre);
    for (let angle = -360; angle < 360; angle += 24)
      expect(await gapAt(angle * degree)).toBeGreaterThan(found.clearance - 2 * micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("valve heads and the wall of the cylinder: gap between solids at every lift", {
  timeout: 600_000,
}, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(616);
  let compared = 0;
  for (let i = 0; i < 12; i++) {
    const bore = 0.085 + 0.02 * random();
    const valve = {
      across: 0.016 + 0.006 * random(),
      // Shut it stands at the deck, so that all of it comes down into the bore.
      height: 0,
      tilt: (-4 + 24 * random()) * degree,
      radius: 0.016 + 0.003 * random(),
    };
    const greatest = 0.009 + 0.004 * random();
    const clearance = Math.min(
      ...[0, greatest].map((lift) =>
        valveToBore({
          bore,
          centreDistance: valve.across,
          centreAlong: 0,
          valveRadius: valve.radius,
          valveTilt: valve.tilt,
          lift,
        }),
      ),
    );
    if (clearance < 50 * micrometre) continue;
    const wall = Manifold.cylinder(200, 500 * bore + 20, 500 * bore + 20, FACETS, true)
      .subtract(Manifold.cylinder(300, 500 * bore, 500 * bore, 2 * FACETS, true))
      .rotate([90, 0, 0]);
    const gaps: number[] = [];
    for (let k = 0; k <= 10; k++)
      gaps.push((await headSolid(valve, (k / 10) * greatest)).minGap(wall, 40) / 1e3);
    // Facets of the bore lie 0.1 um, those of the head 0.2 um within their circles.
    expect(Math.abs(Math.min(...gaps) - clearance)).toBeLessThan(2 * micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(8);
});

test("valve and pocket floor: gap between solids as the piston follows", { timeout: 600_000 }, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(717);
  let compared = 0;
  for (let i = 0; i < 10; i++) {
    const throwRadius = 0.04 + 0.01 * random();
    const crank = { throwRadius, rodLength: 3.2 * throwRadius, pinLineOffset: 0.001 * (random() - 0.5) };
    const valveTilt = (1 + 20 * random()) * degree;
    const [shutValveDistance, curve] = [0.004 + 0.003 * random(), curveOf(random, 1)];
    const valve = { crank, curve, shutValveDistance, valveTilt };
    const found = pistonToValveAxial(valve);
    if (found.clearance < 50 * micrometre) continue;
    const gapAt = async (angle: number) => {
      const head = await headSolid(
        { across: 0, height: 0, tilt: valveTilt, radius: 0.016 },
        curve.at(angle).lift,
      );
      // A floor square to the stem, wide enough for the piston to carry it along under the whole head.
      const floor = Manifold.cube([400, 20, 400], true)
        .translate([0, -10 - 1e3 * shutValveDistance, 0])
        .rotate([0, 0, -valveTilt / degree])
        .translate([0, -1e3 * pistonTravel(crank, angle), 0]);
      return head.minGap(floor, 60) / 1e3;
    };
    expect(Math.abs((await gapAt(found.angle)) - found.clearance)).toBeLessThan(micrometre);
    for (let angle = -60; angle <= 60; angle += 6) {
      const gap = await gapAt(angle * degree);
      expect(gap).toBeGreaterThan(found.clearance - micrometre);
      expect(Math.abs(gap - pistonToValveAxialAt(valve, angle * degree))).toBeLessThan(micrometre);
    }
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(5);
});
