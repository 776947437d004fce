import { groovesOf } from "./groovesOf.ts";
import { pocketsOf } from "./pocketsOf.ts";
import type { Box, PistonScene, Point } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";

/** Right half of the section from the middle of the crown round to the middle of its underside, y from the pin. */
function rightHalf(sizes: Sizes, crown: number, radius: number, skirt: number): readonly Point[] {
  const landRadius = (sizes.mm("piston.topLandDiameter") ?? 2 * radius) / 2;
  const grooves = groovesOf(sizes);
  const pack = grooves.at(-1);
  const packEnd = crown + (pack === undefined ? 0 : pack.top + pack.height);
  const outside: Point[] = [
    { x: 0, y: crown },
    { x: landRadius, y: crown },
  ];
  for (const [index, { top, height, rootRadius }] of grooves.entries()) {
    const below = index === grooves.length - 1 ? radius : landRadius;
    outside.push(
      { x: landRadius, y: crown + top },
      { x: rootRadius, y: crown + top },
      { x: rootRadius, y: crown + top + height },
      { x: below, y: crown + top + height },
    );
  }
  outside.push({ x: radius, y: packEnd }, { x: radius, y: skirt });
  const inner = sizes.mm("piston.skirtInnerHalfWidth");
  const underside = sizes.mm("piston.crownUnderside");
  const crownInner = sizes.mm("piston.crownInnerRadius");
  if (inner === undefined || underside === undefined || crownInner === undefined)
    return [...outside, { x: 0, y: skirt }];
  // Between the sizes that are given the inside is joined by straight lines.
  const shoulder = Math.min(skirt, packEnd + 2);
  return [
    ...outside,
    { x: inner, y: skirt },
    { x: inner, y: shoulder },
    { x: Math.min(crownInner, inner), y: -underside },
    { x: 0, y: -underside },
  ];
}

/** The piston without its place; undefined without compression height and diameter. */
export function pistonOf(sizes: Sizes): Omit<PistonScene, "at"> | undefined {
  const height = sizes.mm("piston.compressionHeight");
  const diameter = sizes.mm("piston.diameter") ?? sizes.mm("block.bore");
  const lowest = sizes.mm("piston.lowestPointBelowPin");
  const skirt = sizes.mm("piston.skirtBelowPin") ?? lowest;
  if (height === undefined || diameter === undefined || skirt === undefined) return undefined;
  const axis = (sizes.mm("block.cylinderAxisOffset") ?? 0) - (sizes.mm("pinLineOffset") ?? 0);
  const right = rightHalf(sizes, -height, diameter / 2, skirt);
  const left = [...right].reverse().map(({ x, y }) => ({ x: -x, y }));
  const moved = ({ x, y }: Point) => ({ x: x + axis, y });
  const half = sizes.mm("piston.lowestPointHalfWidth");
  const pin = sizes.mm("pistonPin.outerDiameter");
  const hole = sizes.mm("pistonPin.innerDiameter");
  return {
    section: [...right, ...left].map(moved),
    pockets: pocketsOf(sizes),
    rings: groovesOf(sizes).flatMap(({ ring }) => (ring === undefined ? [] : bothSides(ring, -height, axis))),
    boss:
      half === undefined || lowest === undefined
        ? undefined
        : { x: -half, y: 0, width: 2 * half, height: lowest },
    pin: pin === undefined ? undefined : { x: 0, y: 0, radius: pin / 2 },
    pinHole: hole === undefined ? undefined : hole / 2,
  };
}

function bothSides({ x, y, width, height }: Box, crown: number, axis: number): readonly Box[] {
  return [x, -x - width].map((from) => ({ x: from + axis, y: y + crown, width, height }));
}
