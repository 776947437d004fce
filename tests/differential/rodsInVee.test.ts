import { rodToCamshaft, rodToLobes, rodToRail } from "@trialfit/mechanics";
import type { Manifold } from "manifold-3d";
import { expect, test } from "vitest";
import { generator } from "./generator.ts";
import { loadSolids } from "./loadSolids.ts";
import { barSolid } from "./partSolids.ts";
import { geometries, type ListedGeometry } from "./rodGeometries.ts";
import { arcFacetError, rodSolid } from "./rodSolid.ts";

const micrometre = 1e-6;
const degree = Math.PI / 180;
const TURNED = [-120, -45, -20, -3, 3, 20, 45, 120];
/** Gaps that a search between solids is spared. */
const FAR = 0.035;
const CYCLE = 4 * Math.PI;

/** The rod of a bank that leans, in the frame of the block, at its own cylinder's crank angle. */
async function leaningRod(geometry: ListedGeometry["geometry"], tilt: number, angle: number) {
  return (await rodSolid({ ...geometry, planeOffset: 0 }, angle)).rotate([0, 0, -tilt / degree]);
}

/** Metal of the block beside the rod of a bank, at that cylinder's crank angle. */
type Metal = (tilt: number, angle: number) => Promise<Manifold>;

/** A found least distance against the solids of both banks: met by one of them where it is said to be, undercut by none. */
async function holds(
  { geometry }: ListedGeometry,
  found: { readonly clearance: number; readonly crankAngle: number },
  bankAngle: number,
  metal: Metal,
): Promise<void> {
  const allowed = arcFacetError(geometry.outline) + 2 * micrometre;
  const gapAt = async (angle: number) => {
    const gaps = [1, -1].map(async (side) => {
      const tilt = (side * bankAngle) / 2;
      const rod = await leaningRod(geometry, tilt, angle);
      return rod.minGap(await metal(tilt, angle), 1e3 * found.clearance + 1) / 1e3;
    });
    return Math.min(...(await Promise.all(gaps)));
  };
  expect(Math.abs((await gapAt(found.crankAngle)) - found.clearance)).toBeLessThan(allowed);
  for (const turned of TURNED)
    expect(await gapAt(found.crankAngle + turned * degree)).toBeGreaterThan(found.clearance - allowed);
}

const isTold = ({ clearance }: { clearance: number }) => clearance > 20 * micrometre && clearance < FAR;

test("oil pan rails under a V: gap between solids", { timeout: 600_000 }, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(717);
  let compared = 0;
  for (const listed of geometries(14, 909)) {
    const { crank, outline } = listed.geometry;
    const bankAngle = (50 + 60 * random()) * degree;
    const rails = { railHalfWidth: 0.08 + 0.05 * random(), railHeight: -0.02 - 0.05 * random() };
    const found = rodToRail({ crank, outline, bankAngle, ...rails });
    if (!isTold(found)) continue;
    const [inner, low] = [1e3 * rails.railHalfWidth, 1e3 * rails.railHeight];
    // The metal ends at the height of the crank axis, above which the block opens towards its banks.
    const sides = [1, -1].map((side) =>
      Manifold.cube([200, -low, 60], true).translate([side * (inner + 100), low / 2, 0]),
    );
    const block = Manifold.union(sides);
    await holds(listed, found, bankAngle, async () => block);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("a camshaft in a V: gap between solids", { timeout: 600_000 }, async () => {
  const random = generator(818);
  let compared = 0;
  for (const listed of geometries(14, 5_252)) {
    const { crank, outline } = listed.geometry;
    const bankAngle = (50 + 60 * random()) * degree;
    const place = { across: 0.02 * (random() - 0.5), height: 0.1 + 0.05 * random(), lobeRadius: 0.024 };
    const found = rodToCamshaft({ crank, outline, bankAngle, ...place });
    if (!isTold(found)) continue;
    const bar = await barSolid(place.across, place.height, place.lobeRadius, 0.06);
    await holds(listed, found, bankAngle, async () => bar);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("lobes that turn with a camshaft in a V: gap between solids", { timeout: 600_000 }, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(919);
  let compared = 0;
  for (const listed of geometries(14, 6_363)) {
    const { crank, outline } = listed.geometry;
    const bankAngle = (60 + 40 * random()) * degree;
    const lobes = {
      across: 0.01 * (random() - 0.5),
      height: 0.1 + 0.04 * random(),
      baseRadius: 0.016,
      followerLean: 0.2 * (random() - 0.5),
      sense: random() < 0.5 ? (1 as const) : (-1 as const),
    };
    const [centre, width, lift] = [110 * degree * (random() < 0.5 ? 1 : -1), 140 * degree, 0.008];
    const liftAt = (crankAngle: number) => {
      const off = crankAngle - centre - CYCLE * Math.round((crankAngle - centre) / CYCLE);
      return Math.abs(off) < width ? lift * Math.cos((Math.PI / 2) * (off / width)) ** 2 : 0;
    };
    const found = rodToLobes({ crank, outline, bankAngle, liftAt, ...lobes });
    if (!isTold(found)) continue;
    /** Followers of a bank, from the middle plane: they lean outwards from their cylinders. */
    const followerOf = (tilt: number) => tilt + Math.sign(tilt) * lobes.followerLean;
    // Each part of a lobe reaches out as far as it will lift its follower when it gets there. The other cylinder of
    // the crankpin is behind by the bank angle, and fires at either of its top dead centres.
    const reach = (tilt: number, angle: number, direction: number) => {
      const when = (from: number, own: number) =>
        liftAt(from + 2 * lobes.sense * (followerOf(own) - direction));
      const other = angle + 2 * tilt;
      return (
        lobes.baseRadius + Math.max(when(angle, tilt), when(other, -tilt), when(other + CYCLE / 2, -tilt))
      );
    };
    await holds(listed, found, bankAngle, async (tilt, angle) => {
      const rim = Array.from({ length: 1440 }, (_, i): [number, number] => {
        const direction = (-2 * Math.PI * i) / 1440;
        const radius = reach(tilt, angle, direction);
        return [
          1e3 * (lobes.across + radius * Math.sin(direction)),
          1e3 * (lobes.height + radius * Math.cos(direction)),
        ];
      });
      return Manifold.extrude([rim], 60, 0, 0, [1, 1], true);
    });
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});
