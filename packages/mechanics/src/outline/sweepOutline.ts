import { requireThat } from "../check/requireAll.ts";
import { requireSliderCrank, type SliderCrank } from "../kinematics/SliderCrank.ts";
import type { DistanceToFixedObstacle, DistanceToObstacle } from "./distanceAt.ts";
import { nearestApproach } from "./nearestApproach.ts";
import { curveU, curveV, type OutlineCurve, outlineCurves } from "./OutlineCurve.ts";
import type { RodOutline, RodPoint } from "./RodOutline.ts";
import { type BlockPoint, rodFrame, rodPointInBlock } from "./rodFrame.ts";
import { sweepBySamples } from "./sweepBySamples.ts";

export type { DistanceToFixedObstacle, DistanceToObstacle };

/** The nearest approach of the rod to an obstacle. */
export interface RodNearest {
  /** least distance [m]; negative when they overlap */
  readonly clearance: number;
  /** crank angle of the nearest approach [rad], from 0 to below 2 pi, or to what the obstacle takes to repeat */
  readonly crankAngle: number;
  /** the rod's nearest point in the frame of the cylinder [m] */
  readonly point: BlockPoint;
  /** the same point in the frame of the rod [m] */
  readonly rodPoint: RodPoint;
}

/** How an obstacle that moves by itself does so. */
export interface ObstacleMotion {
  /** farthest that any point of it moves for each radian of crank angle [m/rad], >= 0 */
  readonly perRadian: number;
  /** whole turns of the crankshaft after which it stands as before, >= 1 */
  readonly turns: number;
}

/** A rod that swings and the parts of what it must clear. */
export interface RodSweep {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
  readonly obstacle: readonly DistanceToObstacle[];
  /**
   * how hollow the parts are towards the rod: most that the distance to any of them bends down along a straight way
   * [1/m] between points that are no farther than `within` [m] from it, >= 0; 0 for what is nowhere hollow, such as a
   * rail or a round bar. Left out where it is not known: then the sweep is slower.
   */
  readonly hollow?: 0 | ((within: number) => number) | undefined;
  /** left out when the obstacle stands still */
  readonly motion?: ObstacleMotion | undefined;
}

/**
 * The answer of a sweep for the point at t on a curve at one crank angle.
 * @param sweep the mechanism and its motion
 * @param curve on which the point lies
 * @param at crank angle [rad], share of the curve [-] and clearance [m]
 * @returns clearance, crank angle within the motion, and the point in both frames
 * @throws never: unchecked, requireSweep checks what it is given
 *
 * Source: plane geometry.
 */
export function nearestOf(
  { crank, motion }: RodSweep,
  curve: OutlineCurve,
  at: { readonly angle: number; readonly t: number; readonly clearance: number },
): RodNearest {
  const rodPoint = { u: curveU(curve, at.t), v: curveV(curve, at.t) };
  const turn = 2 * Math.PI * (motion?.turns ?? 1);
  const turned = at.angle - turn * Math.floor(at.angle / turn);
  return {
    clearance: at.clearance,
    crankAngle: turned < turn ? turned : 0,
    point: rodPointInBlock(rodFrame(crank, at.angle), rodPoint),
    rodPoint,
  };
}

/**
 * Checks the mechanism and that there is something to clear.
 * @param sweep the mechanism, the outline and what it passes
 * @throws RangeError when the mechanism cannot turn, the outline is open or there is nothing to clear
 *
 * Source: definition.
 */
export function requireSweep({ crank, outline, obstacle }: RodSweep): void {
  requireSliderCrank(crank);
  requireThat(outline.elements.length > 0, "outline.elements.length", 0, "a closed outline");
  requireThat(obstacle.length > 0, "obstacle.length", 0, "at least one part");
}

/**
 * Least distance from the swinging rod to an obstacle over the whole turn (or what the obstacle takes to repeat) and
 * over every point of every outline element. Of an obstacle that stands still and says how hollow it is, by
 * `nearestApproach`, to some nanometres; of any other, and where too many points are about as near, by `sweepBySamples`.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @returns the nearest approach
 * @throws RangeError when the mechanism cannot turn, or outline or obstacle are empty
 *
 * Source: plane geometry; the bounds are those of Lipschitz and Taylor: a rod point moves, and turns aside, at most so
 * far per radian.
 */
export function sweepOutline(sweep: RodSweep): RodNearest {
  return nearestBelow(sweep, Number.POSITIVE_INFINITY);
}

/** `sweepOutline` that looks for no more than what is nearer than so much [m]; where nothing is, any point so far off. */
function nearestBelow(sweep: RodSweep, below: number): RodNearest {
  requireSweep(sweep);
  const curves = outlineCurves(sweep.outline);
  const { hollow, motion } = sweep;
  const nearest =
    hollow === undefined || motion !== undefined ? undefined : nearestApproach(sweep, curves, hollow, below);
  return nearest === undefined ? sweepBySamples(sweep) : nearestOf(sweep, curves[nearest.curve]!, nearest);
}

/**
 * Where the rod comes nearest to an obstacle, if that is nearer than a clearance that is wanted. Far from the obstacle
 * this is much quicker than `sweepOutline`.
 * @param sweep the mechanism, the outline and the parts of the obstacle
 * @param clearance [m]
 * @returns the nearest approach; undefined where no point of the rod comes within the clearance, to some nanometres
 * @throws RangeError as `sweepOutline` does
 *
 * Source: as `sweepOutline`.
 */
export function nearerThan(sweep: RodSweep, clearance: number): RodNearest | undefined {
  const nearest = nearestBelow(sweep, clearance);
  return nearest.clearance < clearance ? nearest : undefined;
}
