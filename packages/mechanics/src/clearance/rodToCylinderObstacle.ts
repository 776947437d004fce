import { finite, notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodOutline } from "../outline/RodOutline.ts";
import {
  DISTANCE,
  STEEP_X,
  steepDistance,
  type WriteDistance,
  writeCorner,
  X,
  Y,
} from "../outline/SteepDistance.ts";
import type { DistanceToFixedObstacle } from "../outline/sweepOutline.ts";
import { writeAcrossBesideNotch } from "./writeAcrossBesideNotch.ts";

/** Flat-floored relief cut for the rod into the bottom of the cylinder, on both sides of the bore. */
export interface RodNotch {
  /**
   * depth of the floor [m], measured straight outwards from the bore surface where the rod's side face passes:
   * there the round bore is nearest to the rod, and a floor of depth 0 takes nothing off
   */
  readonly depth: number;
  /** height above the bottom of the cylinder [m] */
  readonly height: number;
  /** width along the crank, centred on the cylinder axis [m] */
  readonly width: number;
  /** radius left by the cutter between floor and top [m] */
  readonly cornerRadius?: number | undefined;
}

/** A rod and the cylinder it swings under, in the frame of the cylinder. */
export interface RodToCylinder {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
  /** diameter of the bore [m] */
  readonly bore: number;
  /** lateral position of the cylinder axis from the crank axis [m], + on the +x side */
  readonly cylinderAxisOffset: number;
  /** height of the lower edge of the cylinder above the crank axis [m]; the lowest edge of the casting */
  readonly cylinderBottomHeight: number;
  /** width of the rod along the crank [m] */
  readonly bigEndWidth: number;
  /** offset of the rod's mid plane from the cylinder axis along the crank [m]; add float for the worst case */
  readonly planeOffset: number;
  /** relief notch; none when left out or when its depth, height or width is 0 */
  readonly notch?: RodNotch | undefined;
}

/**
 * Distance of the rod's outer side face from the cylinder axis along the crank, |offset| + width/2.
 * @param geometry bore [m], > 0; width of the big end [m], > 0; offset of its middle plane [m], either side
 * @returns distance [m]
 * @throws RangeError when a value is out of range or the face lies outside the bore
 *
 * Source: plane geometry.
 */
export function sideFaceDistance(
  geometry: Pick<RodToCylinder, "bore" | "bigEndWidth" | "planeOffset">,
): number {
  const { bore, bigEndWidth, planeOffset } = geometry;
  requireAll(positive, { bore, bigEndWidth });
  requireAll(finite, { planeOffset });
  const distance = Math.abs(planeOffset) + bigEndWidth / 2;
  const expected = `|planeOffset| + bigEndWidth/2 = ${distance} below half the bore, ${bore / 2}`;
  requireThat(distance < bore / 2, "bigEndWidth", bigEndWidth, expected);
  return distance;
}

/**
 * How hollow the round bore is towards the rod: across it the way to the wall is R - sqrt(x^2 + z^2), which bends down
 * by z^2 / (x^2 + z^2)^(3/2). No way is shorter than that across, so a point that is so near has R less that way at
 * least between itself and the cylinder axis.
 * @param geometry bore [m], > 0; width of the big end [m], > 0; offset of its middle plane [m], either side
 * @returns most that the distance to any part of `cylinderObstacle` bends down [1/m] between points of a distance of
 *   at most `within` [m]
 * @throws RangeError when a value is out of range or the face lies outside the bore
 *
 * Source: plane geometry.
 */
export function boreHollow(
  geometry: Pick<RodToCylinder, "bore" | "bigEndWidth" | "planeOffset">,
): (within: number) => number {
  const face = sideFaceDistance(geometry);
  const radius = geometry.bore / 2;
  return (within) => (face * face) / Math.max(face, radius - within) ** 3;
}

/** Share of a corner radius that lies inside the square corner on the diagonal, 1 - 1/sqrt(2). */
const cornerShare = 1 - Math.SQRT1_2;

interface OpenNotch {
  readonly depth: number;
  readonly height: number;
  readonly halfWidth: number;
}

/**
 * The square notch that fits inside one with rounded corners: 0.293 of the radius off depth and height.
 * Every point of the rounding is beyond one of the two walls moved in, so this is on the safe side.
 */
function openNotch(notch: RodNotch | undefined): OpenNotch | undefined {
  if (notch === undefined) return undefined;
  const { depth, height, width, cornerRadius = 0 } = notch;
  requireAll(notNegative, {
    "notch.depth": depth,
    "notch.height": height,
    "notch.width": width,
    "notch.cornerRadius": cornerRadius,
  });
  const lost = cornerShare * cornerRadius;
  if (width === 0 || depth <= lost || height <= lost) return undefined;
  return { depth: depth - lost, height: height - lost, halfWidth: width / 2 };
}

/**
 * Parts of the metal around the bottom of a cylinder for the sweep of a rod: y >= bottom outside the
 * round bore, on either side of it, less the notch. The rod is a body with flat faces, and every
 * distance is true in space, taken at the face farther from the cylinder axis. That is enough: at one
 * (x, y) the way across is R - sqrt((x - xc)^2 + z^2), which falls as |z| grows; the metal above a
 * notch has the same wall; its floor does not depend on z; and metal beside it that is reached from z
 * is reached by the same shift from any larger |z|. So no point at a smaller |z| is nearer.
 * With a notch the metal is the union of what lies above it, beyond its floor and beside it.
 * @param geometry the rod and the cylinder
 * @returns one function per part and side
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function cylinderObstacle(
  geometry: Omit<RodToCylinder, "crank" | "outline">,
): readonly DistanceToFixedObstacle[] {
  const { bore, cylinderAxisOffset: axis, cylinderBottomHeight: bottom } = geometry;
  requireAll(finite, { cylinderAxisOffset: axis, cylinderBottomHeight: bottom });
  const face = sideFaceDistance(geometry);
  const radius = bore / 2;
  const open = openNotch(geometry.notch);
  // The floor lies outside the bore's circle at the side face, so what stands beyond it there is metal.
  const floor = Math.sqrt(radius * radius - face * face) + (open?.depth ?? 0);
  // A notch so narrow that its floor stays inside the circle takes nothing off.
  const notch = open !== undefined && Math.hypot(floor, open.halfWidth) > radius ? open : undefined;
  const top = bottom + (notch?.height ?? 0);
  return [1, -1].flatMap((side): readonly DistanceToFixedObstacle[] => {
    // The wall of the other side is never nearer than this one, so beyond the axis the way stays as on it.
    const wall = steepDistance((n) => {
      const across = Math.max(0, side * (n[X]! - axis));
      const fromAxis = Math.sqrt(across * across + face * face);
      writeCorner(n, radius - fromAxis, (-side * across) / fromAxis, top - n[Y]!, -1);
    }, {});
    if (notch === undefined) return [wall];
    const { halfWidth } = notch;
    const writeBeside: WriteDistance = (n) => {
      const across = side * (n[X]! - axis);
      writeAcrossBesideNotch(n, Math.max(0, across), radius, face, halfWidth);
      writeCorner(n, n[DISTANCE]!, across > 0 ? side * n[STEEP_X]! : 0, bottom - n[Y]!, -1);
    };
    return [
      wall,
      steepDistance((n) => writeCorner(n, floor - side * (n[X]! - axis), -side, bottom - n[Y]!, -1), {}),
      // A rod that passes inside the notch keeps the way to its side, along the crank, however far it swings.
      steepDistance(writeBeside, face < halfWidth ? { least: halfWidth - face } : {}),
    ];
  });
}
