import { chordClearance, rodToCylinderBottom, rodToCylinderProfile } from "@trialfit/mechanics";
import { expect, test } from "vitest";
import { geometries } from "./rodGeometries.ts";
import { leastBySampling, leastOfListedPoints } from "./rodLeastBySampling.ts";
import { solidGap } from "./rodSolid.ts";

const micrometre = 1e-6;

/** Deviations above the tolerance, the largest one, and how many were compared. */
function compare(pairs: readonly (readonly [found: number, expected: number])[], tolerance: number) {
  const deviations = pairs.map(([found, expected]) => Math.abs(found - expected));
  return {
    compared: pairs.length,
    largest: Math.max(...deviations),
    outside: deviations.filter((deviation) => !(deviation <= tolerance)).length,
  };
}

test("1,000 invented geometries agree with plain sampling in space to 1 micrometre", {
  timeout: 600_000,
}, () => {
  const listed = geometries(1000, 20_731);
  const started = performance.now();
  const found = listed.map(({ geometry }) => rodToCylinderBottom(geometry).clearance);
  const each = (performance.now() - started) / listed.length;
  const sampled = listed.map((one) => leastBySampling(one));
  const result = compare(
    found.map((clearance, i) => [clearance, sampled[i]!]),
    micrometre,
  );
  const missed = Math.max(...found.map((clearance, i) => clearance - sampled[i]!));
  const free = found.filter((clearance) => clearance > 0).length;
  console.log(
    `${result.compared} geometries, ${free} free; largest deviation ${(result.largest * 1e6).toPrecision(3)} um, ` +
      `most above the sampled least ${(missed * 1e6).toPrecision(3)} um; ${each.toFixed(3)} ms each`,
  );
  expect(result.compared).toBe(1000);
  expect(free).toBeGreaterThan(300);
  expect(1000 - free).toBeGreaterThan(50);
  expect(result.outside).toBe(0);
});

test("the comparison catches methods that are wrong", { timeout: 600_000 }, () => {
  const listed = geometries(30, 415);
  const sampled = listed.map((one) => leastBySampling(one));
  const right = listed.map(
    ({ geometry }, i) => [rodToCylinderBottom(geometry).clearance, sampled[i]!] as const,
  );
  const pointsOnly = listed.map((one, i) => [leastOfListedPoints(one), sampled[i]!] as const);
  const inOnePlane = listed.map(
    ({ geometry }, i) => [chordClearance(geometry).clearance, sampled[i]!] as const,
  );
  expect(compare(right, micrometre)).toMatchObject({ compared: 30, outside: 0 });
  expect(compare(pointsOnly, micrometre).outside).toBeGreaterThan(10);
  expect(compare(inOnePlane, micrometre).outside).toBeGreaterThan(10);
});

test("20 geometries agree with the gap between solids", { timeout: 600_000 }, async () => {
  const free = geometries(80, 9_117)
    .map((one) => ({ ...one, nearest: rodToCylinderBottom(one.geometry) }))
    .filter(({ nearest }) => nearest.clearance > 20 * micrometre)
    .slice(0, 20);
  const pairs: [number, number][] = [];
  let facets = 0;
  for (const { geometry, nearest } of free) {
    const degrees = (nearest.crankAngle * 180) / Math.PI;
    const profile = rodToCylinderProfile(geometry, 360);
    const beside = [Math.floor(degrees), Math.ceil(degrees) % 360].map((i) => profile[i]!);
    for (const { crankAngle, clearance } of [nearest, ...beside]) {
      const solid = await solidGap(geometry, crankAngle, clearance + 1e-3);
      facets = Math.max(facets, solid.facetError);
      pairs.push([clearance, solid.gap]);
    }
  }
  const result = compare(pairs, facets + micrometre);
  console.log(
    `${result.compared} gaps between solids; largest deviation ${(result.largest * 1e6).toPrecision(3)} um, ` +
      `facet error up to ${(facets * 1e6).toFixed(4)} um`,
  );
  expect(free.length).toBe(20);
  expect(result.compared).toBe(60);
  expect(free.filter(({ geometry }) => geometry.notch !== undefined).length).toBeGreaterThan(4);
  expect(facets).toBeLessThan(micrometre);
  expect(result.outside).toBe(0);
});
