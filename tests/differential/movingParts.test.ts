import { pistonToCounterweight, pistonToPiston, rodToCamshaft } from "@trialfit/mechanics";
import { expect, test } from "vitest";
import { generator } from "./generator.ts";
import { barSolid, counterweightSolid, pistonSolid, skirtSolid } from "./partSolids.ts";
import { geometries } from "./rodGeometries.ts";
import { arcFacetError, rodSolid } from "./rodSolid.ts";

const micrometre = 1e-6;
const degree = Math.PI / 180;

test("rods and a camshaft in a single row: gap between solids", { timeout: 600_000 }, async () => {
  const random = generator(77);
  let compared = 0;
  for (const { geometry } of geometries(12, 5_551)) {
    const { crank, outline } = geometry;
    const [across, height] = [0.085 + 0.03 * random(), 0.05 + 0.05 * random()];
    const circle = {
      across: (random() < 0.5 ? -1 : 1) * across,
      height,
      lobeRadius: 0.02 + 0.008 * random(),
    };
    const found = rodToCamshaft({ crank, outline, ...circle, bankAngle: 0 });
    if (found.clearance < 20 * micrometre || found.clearance > 0.025) continue;
    const lobes = await barSolid(circle.across, circle.height, circle.lobeRadius, 0.01);
    const gapAt = async (angle: number) =>
      (await rodSolid({ ...geometry, planeOffset: 0 }, angle)).minGap(lobes, 1e3 * found.clearance + 1) / 1e3;
    const facets = arcFacetError(outline) + micrometre;
    expect(Math.abs((await gapAt(found.crankAngle)) - found.clearance)).toBeLessThan(facets);
    for (const turned of [-20, -3, 3, 20])
      expect(await gapAt(found.crankAngle + turned * degree)).toBeGreaterThan(found.clearance - facets);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("skirt sides and counterweight: gap between solids", { timeout: 600_000 }, async () => {
  const random = generator(4_242);
  let compared = 0;
  for (let i = 0; i < 12; i++) {
    const throwRadius = 0.035 + 0.02 * random();
    const crank = { throwRadius, rodLength: 3.3 * throwRadius, pinLineOffset: 0.004 * (random() - 0.5) };
    const skirt = { depth: 0.025, halfWidth: 0.03 + 0.02 * random(), gapHalfWidth: 0.025 * random() };
    const counterweight = { radius: 1.3 * throwRadius, halfSpan: (75 + 30 * random()) * degree };
    const { clearance, angle } = pistonToCounterweight({
      crank,
      lowestPointDepth: skirt.depth,
      lowestHalfWidth: skirt.halfWidth,
      gapHalfWidth: skirt.gapHalfWidth,
      counterweightRadius: counterweight.radius,
      counterweightHalfSpan: counterweight.halfSpan,
    });
    if (clearance < 20 * micrometre) continue;
    const gapAt = async (at: number) =>
      (await skirtSolid(crank, skirt, at)).minGap(
        await counterweightSolid(counterweight.radius, counterweight.halfSpan, at),
        60,
      ) / 1e3;
    expect(Math.abs((await gapAt(angle)) - clearance)).toBeLessThan(micrometre);
    for (const turned of [-90, -40, -15, -2, 2, 15, 40, 90])
      expect(await gapAt(angle + turned * degree)).toBeGreaterThan(clearance - micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(8);
});

test("pistons across a V: as near as said, with and without stagger", {
  timeout: 600_000,
}, async () => {
  const random = generator(90_210);
  let compared = 0;
  for (let i = 0; i < 8; i++) {
    const throwRadius = 0.035 + 0.015 * random();
    const crank = { throwRadius, rodLength: (3 + random()) * throwRadius, pinLineOffset: 0 };
    const piston = { skirtDepth: 0.8 * throwRadius, skirtDiameter: (1.7 + 0.4 * random()) * throwRadius };
    const bankAngle = (75 + 35 * random()) * degree;
    const { clearance, angle } = pistonToPiston({ crank, bankAngle, bankStagger: 0, ...piston });
    if (clearance < 20 * micrometre) continue;
    const gapAt = async (at: number, along: number) => {
      // The bank with the first top dead centre leans back; the other one stands a bank angle further on.
      const first = await pistonSolid(crank, piston, { angle: at, tilt: -bankAngle / 2, along: 0 });
      const second = { angle: at - bankAngle, tilt: bankAngle / 2, along };
      return first.minGap(await pistonSolid(crank, piston, second), 300) / 1e3;
    };
    expect(Math.abs((await gapAt(angle, 0)) - clearance)).toBeLessThan(micrometre);
    const staggered = pistonToPiston({ crank, bankAngle, bankStagger: 0.024, ...piston }).clearance;
    expect(staggered).toBeGreaterThan(clearance + 100 * micrometre);
    expect(Math.abs((await gapAt(angle, 0.024)) - staggered)).toBeLessThan(20 * micrometre);
    for (const turned of [-60, -10, 10, 60])
      expect(await gapAt(angle + turned * degree, 0)).toBeGreaterThan(clearance - micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});
