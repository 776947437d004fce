import { pinHeight, type SliderCrank } from "@trialfit/mechanics";
import type { Manifold } from "manifold-3d";
import { loadSolids } from "./loadSolids.ts";

/** Facets of a whole turn. A facet lies inside its circle by at most R (1 - cos(half a facet)): 0.3 um of 100 mm. */
const facets = 1440;
/** Fewer for a piston, for speed: 17 um of 50 mm, and nothing at its innermost point, a corner of the facets. */
const pistonFacets = 120;
const mm = 1e3;
const degrees = 180 / Math.PI;

/** A round bar along the crank, in millimetres. */
export async function barSolid(x: number, y: number, radius: number, length: number): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  return Manifold.cylinder(mm * length, mm * radius, mm * radius, facets, true).translate([
    mm * x,
    mm * y,
    0,
  ]);
}

/** A counterweight: a sector about the crank axis, its middle opposite a crankpin at a crank angle. */
export async function counterweightSolid(radius: number, halfSpan: number, angle: number): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const count = Math.ceil((facets * halfSpan) / Math.PI);
  const rim = Array.from({ length: count + 1 }, (_, i): [number, number] => {
    const direction = angle + Math.PI - halfSpan + (2 * halfSpan * i) / count;
    return [mm * radius * Math.sin(direction), mm * radius * Math.cos(direction)];
  });
  // The rim runs clockwise; a polygon with its inside on the left is wanted.
  return Manifold.extrude([[[0, 0], ...rim].reverse() as [number, number][]], 20, 0, 0, [1, 1], true);
}

/** The two sides of a skirt, or with a gap of 0 one block, as high as the piston stands at a crank angle. */
export async function skirtSolid(
  crank: SliderCrank,
  skirt: { depth: number; halfWidth: number; gapHalfWidth: number },
  angle: number,
): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const wide = mm * (skirt.halfWidth - skirt.gapHalfWidth);
  const middle = (mm * (skirt.halfWidth + skirt.gapHalfWidth)) / 2;
  const sides = [1, -1].map((side) => Manifold.cube([wide, 30, 20], true).translate([side * middle, 15, 0]));
  const [x, y] = [crank.pinLineOffset, pinHeight(crank, angle) - skirt.depth];
  return Manifold.union(sides).translate([mm * x, mm * y, 0]);
}

/** A piston as a plain cylinder from the lower end of its skirt upwards, in a bank that leans. */
export async function pistonSolid(
  crank: SliderCrank,
  piston: { skirtDepth: number; skirtDiameter: number },
  place: { angle: number; tilt: number; along: number },
): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const radius = (mm * piston.skirtDiameter) / 2;
  const low = pinHeight(crank, place.angle) - piston.skirtDepth;
  return Manifold.cylinder(60, radius, radius, pistonFacets, false)
    .rotate([-90, 0, 0])
    .translate([0, mm * low, mm * place.along])
    .rotate([0, 0, -degrees * place.tilt]);
}
