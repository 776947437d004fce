import type { OutlineElement, RodToCylinder } from "@trialfit/mechanics";
import type { Manifold } from "manifold-3d";
import { loadSolids } from "./loadSolids.ts";

/** Facets of the bore, and of a whole turn of an outline arc. */
const boreFacets = 1440;
const arcFacets = 1440;

/** Points of an element in travel, its end left out: the next element starts there. */
function pointsOf(element: OutlineElement): readonly (readonly [number, number])[] {
  if (element.kind === "segment") return [[element.from.u, element.from.v]];
  const { centre, radius, startAngle, sweepAngle } = element;
  const count = Math.max(2, Math.ceil((arcFacets * Math.abs(sweepAngle)) / (2 * Math.PI)));
  return Array.from({ length: count }, (_, i) => {
    const angle = startAngle + (sweepAngle * i) / count;
    return [centre.u + radius * Math.cos(angle), centre.v + radius * Math.sin(angle)] as const;
  });
}

/** The extruded rod at one crank angle, in millimetres; facets of outline arcs lie inside the arc. */
export async function rodSolid(
  {
    crank,
    outline,
    bigEndWidth,
    planeOffset,
  }: Pick<RodToCylinder, "crank" | "outline" | "bigEndWidth" | "planeOffset">,
  angle: number,
): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const { throwRadius: r, rodLength: l, pinLineOffset: e } = crank;
  const tilt = Math.asin((r * Math.sin(angle) - e) / l);
  const polygon = outline.elements
    .flatMap(pointsOf)
    .map(([u, v]): [number, number] => [
      1e3 * (r * Math.sin(angle) - u * Math.sin(tilt) + v * Math.cos(tilt)),
      1e3 * (r * Math.cos(angle) + u * Math.cos(tilt) + v * Math.sin(tilt)),
    ]);
  return Manifold.extrude([polygon], 1e3 * bigEndWidth, 0, 0, [1, 1], true).translate([
    0,
    0,
    1e3 * planeOffset,
  ]);
}

/** By how much facets of outline arcs lie inside the arc at most [m]. */
export function arcFacetError({ elements }: RodToCylinder["outline"]): number {
  const arcs = elements.map((element) => (element.kind === "arc" ? element.radius : 0));
  return Math.max(...arcs) * (1 - Math.cos(Math.PI / arcFacets));
}

/** The block about a cylinder, in millimetres, its bore open below; square notch corners moved in by 0.293 of theirs. */
export async function blockSolid(geometry: RodToCylinder): Promise<Manifold> {
  const { Manifold } = await loadSolids();
  const { bore, cylinderAxisOffset, cylinderBottomHeight, bigEndWidth, planeOffset } = geometry;
  const radius = 500 * bore;
  const height = 250;
  const width = 2 * radius + 120;
  const cylinder = Manifold.cylinder(3 * height, radius, radius, boreFacets, true).rotate([90, 0, 0]);
  let block = Manifold.cube([width, height, width], true)
    .translate([0, height / 2, 0])
    .subtract(cylinder);
  const lost = (1 - Math.SQRT1_2) * (geometry.notch?.cornerRadius ?? 0);
  const face = 1e3 * (Math.abs(planeOffset) + bigEndWidth / 2);
  const depth = 1e3 * ((geometry.notch?.depth ?? 0) - lost);
  const rise = 1e3 * ((geometry.notch?.height ?? 0) - lost);
  if (geometry.notch !== undefined && depth > 0 && rise > 0) {
    block = block.subtract(
      Manifold.cube(
        [2 * (Math.sqrt(radius ** 2 - face ** 2) + depth), 2 * rise, 1e3 * geometry.notch.width],
        true,
      ),
    );
  }
  return block.translate([1e3 * cylinderAxisOffset, 1e3 * cylinderBottomHeight, 0]);
}

/** By how much facets of the bore lie inside its circle at most [m]. */
export const boreFacetError = (bore: number): number => (bore / 2) * (1 - Math.cos(Math.PI / boreFacets));

/**
 * Gap between the extruded rod at one crank angle and the block as solids, in metres. Facets of the bore lie inside
 * the circle and those of outline arcs inside the arc, each by at most R (1 - cos(half a facet)).
 * @param farthest gaps beyond this come out as this; a short one keeps the search short
 */
export async function solidGap(
  geometry: RodToCylinder,
  angle: number,
  farthest: number,
): Promise<{ readonly gap: number; readonly facetError: number }> {
  const [rod, block] = [await rodSolid(geometry, angle), await blockSolid(geometry)];
  const gap = rod.minGap(block, 1e3 * farthest) / 1e3;
  return { gap, facetError: boreFacetError(geometry.bore) + arcFacetError(geometry.outline) };
}
