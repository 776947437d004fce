import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";
import { bankTilts, inLeaningFrame } from "../kinematics/bankTilts.ts";
import { type DistanceToObstacle, type RodNearest, sweepOutline } from "../outline/sweepOutline.ts";
import { fourStrokeCycle } from "../valves/fourStrokeCycle.ts";
import { type LobeProfile, lobeDistance, lobeProfile, lobeSamples, radiusTowards } from "./lobeProfile.ts";
import { type RodToCamshaft, rodToCamshaft } from "./rodToCamshaft.ts";

/** A rod and the lobes of a camshaft in the block, as they turn with it. */
export interface RodToLobes extends Omit<RodToCamshaft, "lobeRadius"> {
  /** radius of the lobes where they do not lift [m], > 0 */
  readonly baseRadius: number;
  /** lift of the higher of a cylinder's lobes [m], >= 0, at its crank angle from overlap top dead centre [rad] */
  readonly liftAt: (crankAngle: number) => number;
  /** lean of the followers from the cylinders of their bank [rad], + outwards; in one row + with rotation */
  readonly followerLean: number;
  /** 1 when the camshaft turns as the crankshaft does, -1 when it turns against it */
  readonly sense: 1 | -1;
}

/** Above what the search for a clearance leaves open. */
const nanometre = 1e-9;

/**
 * The outside of all lobes beside one crankpin, fixed to the camshaft: its angle 0 is what stands at the follower
 * of the swept cylinder at that cylinder's overlap top dead centre. The cylinder of the other bank may fire at
 * either of its two top dead centres, so its lobes are taken in both places.
 */
function profileBeside(
  geometry: RodToLobes,
  lifts: readonly number[],
  tilts: readonly number[],
  tilt: number,
): LobeProfile {
  const { baseRadius, followerLean, sense } = geometry;
  const shifts = tilts.flatMap((other) => {
    if (other === tilt) return [0];
    const apart = leaned(other, followerLean) - leaned(tilt, followerLean);
    const shift = (tilt - other) / 2 + sense * apart;
    return [shift, shift + Math.PI];
  });
  const places = shifts.map((shift) => (shift / (2 * Math.PI)) * lobeSamples);
  return lobeProfile(
    lifts.map((_, i) => baseRadius + Math.max(...places.map((place) => radiusTowards(lifts, i + place)))),
  );
}

/** Direction of a bank's followers from the middle plane of the block. */
function leaned(tilt: number, followerLean: number): number {
  return tilt + (tilt < 0 ? -followerLean : followerLean);
}

/**
 * Least clearance between the rods and the lobes of a camshaft in the block over a four-stroke cycle, both in
 * their true places. A lobe is taken to reach out, in every direction, as far as its lift when that part
 * passes the follower: no flat or roller follower in line with the axis leaves more metal than that, so it is
 * on the safe side. So is that every lobe of the crankpin's cylinders is taken to lie in the plane of the rod.
 * @param geometry mechanism, outline, place of the camshaft, lobes and how they are driven
 * @returns clearance [m], negative when they overlap; crank angle [rad] from overlap top dead centre, 0 to below
 *   4 pi, and nearest point in the frame of the cylinder whose rod comes nearest
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function rodToLobes(geometry: RodToLobes): RodNearest {
  const { crank, outline, across, height, bankAngle, baseRadius, liftAt, followerLean, sense } = geometry;
  requireAll(positive, { baseRadius });
  requireAll(finite, { followerLean });
  const tilts = bankTilts(bankAngle);
  const lifts = Array.from({ length: lobeSamples }, (_, i) => liftAt((fourStrokeCycle * i) / lobeSamples));
  lifts.forEach((lift, i) => {
    if (!(lift >= 0)) requireAll(notNegative, { [`liftAt(${(fourStrokeCycle * i) / lobeSamples})`]: lift });
  });
  const views = tilts.map((tilt) => ({
    profile: profileBeside(geometry, lifts, tilts, tilt),
    axis: inLeaningFrame({ x: across, y: height }, tilt),
    follower: leaned(tilt, followerLean) - tilt,
  }));
  const greatest = Math.max(...views.map(({ profile }) => profile.greatest));
  // The base circle is always there, so no answer is larger than the clearance from it.
  const base = rodToCamshaft({ crank, outline, across, height, bankAngle, lobeRadius: baseRadius }).clearance;
  const limit = Math.max(0, base) + nanometre;
  const obstacle = views.map(({ profile, axis, follower }): DistanceToObstacle => {
    return (x, y, angle) => {
      const [dx, dy] = [x - axis.x, y - axis.y];
      const r = Math.sqrt(dx * dx + dy * dy);
      return lobeDistance(profile, r, angle / 2 + sense * (follower - Math.atan2(dx, dy)), limit);
    };
  });
  return sweepOutline({ crank, outline, obstacle, motion: { perRadian: greatest / 2, turns: 2 } });
}
