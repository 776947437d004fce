import { rodToLobes, rodToOppositeCylinder, rodToPoint, rodToRail } from "@trialfit/mechanics";
import type { Manifold } from "manifold-3d";
import { expect, test } from "vitest";
import { quantities } from "../../packages/core/src/derive/generated/quantities.ts";
import { generator } from "./generator.ts";
import { loadSolids } from "./loadSolids.ts";
import { barSolid, counterweightSolid } from "./partSolids.ts";
import { geometries, type ListedGeometry } from "./rodGeometries.ts";
import { arcFacetError, blockSolid, boreFacetError, rodSolid } from "./rodSolid.ts";

const micrometre = 1e-6;
const degree = Math.PI / 180;
const TURNED = [-120, -45, -20, -3, 3, 20, 45, 120];
/** Gaps that a search between solids is spared. */
const FAR = 0.035;

/** A found least distance against solids: met where it is said to be, and nowhere undercut. */
async function holds(
  found: { readonly clearance: number; readonly crankAngle: number },
  gapAt: (angle: number) => Promise<number>,
  allowed: number,
): Promise<void> {
  expect(Math.abs((await gapAt(found.crankAngle)) - found.clearance)).toBeLessThan(allowed);
  for (const turned of TURNED)
    expect(await gapAt(found.crankAngle + turned * degree)).toBeGreaterThan(found.clearance - allowed);
}

const isTold = (clearance: number) => clearance > 20 * micrometre && clearance < FAR;
const inPlane = (geometry: ListedGeometry["geometry"], angle: number) =>
  rodSolid({ ...geometry, planeOffset: 0 }, angle);

test("oil pan rails of one row: gap between solids", { timeout: 600_000 }, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(313);
  let compared = 0;
  for (const { geometry } of geometries(14, 808)) {
    const { crank, outline } = geometry;
    const rails = { railHalfWidth: 0.075 + 0.04 * random(), railHeight: -0.02 - 0.05 * random() };
    const found = rodToRail({ crank, outline, ...rails });
    if (!isTold(found.clearance)) continue;
    const [inner, low] = [1e3 * rails.railHalfWidth, 1e3 * rails.railHeight];
    const block = Manifold.union(
      [1, -1].map((side) =>
        Manifold.cube([200, 600, 60], true).translate([side * (inner + 100), low + 300, 0]),
      ),
    );
    const gapAt = async (angle: number) =>
      (await inPlane(geometry, angle)).minGap(block, 1e3 * found.clearance + 1) / 1e3;
    await holds(found, gapAt, arcFacetError(outline) + micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("oil squirters: gap between solids", { timeout: 600_000 }, async () => {
  const random = generator(626);
  let compared = 0;
  for (const { geometry } of geometries(14, 4_711)) {
    const { crank, outline } = geometry;
    const side = random() < 0.5 ? -1 : 1;
    const nozzle = { x: side * (0.04 + 0.05 * random()), y: 0.07 + 0.05 * random(), radius: 0.004 };
    const found = rodToPoint({ crank, outline, ...nozzle });
    if (!isTold(found.clearance)) continue;
    const bar = await barSolid(nozzle.x, nozzle.y, nozzle.radius, 0.06);
    const gapAt = async (angle: number) =>
      (await inPlane(geometry, angle)).minGap(bar, 1e3 * found.clearance + 1) / 1e3;
    await holds(found, gapAt, arcFacetError(outline) + micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(5);
});

test("cylinders of the other bank: gap between solids", { timeout: 600_000 }, async () => {
  const { Manifold } = await loadSolids();
  const random = generator(939);
  let compared = 0;
  for (const { geometry } of geometries(34, 1_234)) {
    const { notch: _, ...drawn } = geometry;
    const bare = { ...drawn, cylinderBottomHeight: drawn.cylinderBottomHeight + 0.015 };
    const opposite = { bankAngle: (55 + 40 * random()) * degree, bankStagger: 0.02 + 0.004 * random() };
    let found: ReturnType<typeof rodToOppositeCylinder>;
    try {
      found = rodToOppositeCylinder({ ...bare, ...opposite });
    } catch {
      // The rod stands beside the cylinder altogether.
      continue;
    }
    if (!isTold(found.clearance)) continue;
    const beside = { ...bare, planeOffset: opposite.bankStagger + Math.abs(bare.planeOffset) };
    const upright = await blockSolid(beside);
    const half = Manifold.cube([600, 1200, 600], true);
    const turn = opposite.bankAngle / degree;
    const banks: Manifold[] = [1, -1].map((side) =>
      upright
        .rotate([0, 0, -side * turn])
        .intersect(half.translate([side * 300, 0, 0]).rotate([0, 0, (-side * turn) / 2])),
    );
    const block = Manifold.union(banks);
    const gapAt = async (angle: number) =>
      (await rodSolid(beside, angle)).minGap(block, 1e3 * found.clearance + 1) / 1e3;
    await holds(found, gapAt, arcFacetError(bare.outline) + boreFacetError(bare.bore) + micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(4);
});

/** A lobe as it stands at a crank angle, from what its follower sees: the lift of each flank as it comes by. */
async function lobeSolid(
  place: { x: number; y: number; follower: number; sense: 1 | -1 },
  radiusAt: (crankAngle: number) => number,
  angle: number,
): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const rim = Array.from({ length: 1440 }, (_, i): [number, number] => {
    const direction = (-2 * Math.PI * i) / 1440;
    const radius = radiusAt(angle + 2 * place.sense * (place.follower - direction));
    return [1e3 * (place.x + radius * Math.sin(direction)), 1e3 * (place.y + radius * Math.cos(direction))];
  });
  return Manifold.extrude([rim], 60, 0, 0, [1, 1], true);
}

test("lobes that turn with the camshaft: gap between solids", { timeout: 600_000 }, async () => {
  const random = generator(1_252);
  let compared = 0;
  for (const { geometry } of geometries(26, 99)) {
    const { crank, outline } = geometry;
    const lobes = {
      across: (random() < 0.5 ? -1 : 1) * (0.08 + 0.03 * random()),
      height: 0.06 + 0.05 * random(),
      baseRadius: 0.017,
      followerLean: 0.4 * (random() - 0.5),
      sense: random() < 0.5 ? (1 as const) : (-1 as const),
    };
    const [centre, width, lift] = [110 * degree * (random() < 0.5 ? 1 : -1), 140 * degree, 0.008];
    const liftAt = (crankAngle: number) => {
      const turn = 4 * Math.PI;
      const off = crankAngle - centre - turn * Math.round((crankAngle - centre) / turn);
      return Math.abs(off) < width ? lift * Math.cos((Math.PI / 2) * (off / width)) ** 2 : 0;
    };
    const found = rodToLobes({ crank, outline, bankAngle: 0, liftAt, ...lobes });
    if (!isTold(found.clearance)) continue;
    const place = { x: lobes.across, y: lobes.height, follower: lobes.followerLean, sense: lobes.sense };
    const gapAt = async (angle: number) => {
      const lobe = await lobeSolid(place, (crankAngle) => lobes.baseRadius + liftAt(crankAngle), angle);
      return (await inPlane(geometry, angle)).minGap(lobe, 1e3 * found.clearance + 1) / 1e3;
    };
    await holds(found, gapAt, arcFacetError(outline) + 2 * micrometre);
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});

test("counterweights and an oil squirter: gap between solids as the shaft turns", async () => {
  const random = generator(2_020);
  const { compute } = quantities.get("counterweightToSquirter")!;
  let compared = 0;
  for (let i = 0; i < 10; i++) {
    const [R_cw, r_sq, C_m] = [0.06 + 0.02 * random(), 0.003 + 0.002 * random(), 0.0001 * random()];
    const [reach, direction] = [R_cw + 0.004 + 0.02 * random(), 0.9 * (random() - 0.5)];
    const [x_sq, y_sq] = [reach * Math.sin(direction), reach * Math.cos(direction)];
    const clearance = compute({ x_sq, y_sq, r_sq, R_cw, C_m }, {}, {}, 0);
    if (!isTold(clearance)) continue;
    // The shaft lies on the squirter's side of its bearings, half the clearance off.
    const shift = [(500 * C_m * x_sq) / reach, (500 * C_m * y_sq) / reach, 0] as const;
    const bar = await barSolid(x_sq, y_sq, r_sq, 0.06);
    const halfSpan = 70 * degree;
    const gapAt = async (angle: number) =>
      (await counterweightSolid(R_cw, halfSpan, angle))
        .translate([...shift])
        .minGap(bar, 1e3 * clearance + 1) / 1e3;
    // Opposite the crankpin the rim passes the squirter, and stays level with it over its span.
    await holds({ clearance, crankAngle: direction + Math.PI }, gapAt, micrometre);
    for (const turned of [-60, -30, 30, 60])
      expect(Math.abs((await gapAt(direction + Math.PI + turned * degree)) - clearance)).toBeLessThan(
        micrometre,
      );
    compared++;
  }
  expect(compared).toBeGreaterThanOrEqual(6);
});
