import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/**
 * Least distance of the piston's lowest edge from the rim of the counterweight, over the crank angles at
 * which the point in question lies within the counterweight's angular span. The counterweight is a sector of
 * a circle about the crank axis, centred opposite the crankpin.
 * @param input.crank the mechanism
 * @param input.lowestPointDepth lowest points of the piston below the pin axis [m], > 0 and less than the
 * pin's height at bottom dead centre
 * @param input.lowestHalfWidth half width of that edge, symmetric about the pin line [m], >= 0
 * @param input.counterweightRadius [m], > 0
 * @param input.counterweightHalfSpan half of its angular span [rad], 0.01 up to half a turn
 * @returns clearance [m], - when they meet, and the crank angle [rad] where it is least, near bottom dead
 * centre
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function pistonToCounterweight(input: {
  crank: SliderCrank;
  lowestPointDepth: number;
  lowestHalfWidth: number;
  counterweightRadius: number;
  counterweightHalfSpan: number;
}): { clearance: number; angle: number } {
  const { crank, lowestPointDepth, lowestHalfWidth, counterweightRadius, counterweightHalfSpan } = input;
  requireAll(positive, { lowestPointDepth, counterweightRadius });
  requireAll(notNegative, { lowestHalfWidth });
  requireAll({ atLeast: 0.01, below: Math.PI }, { counterweightHalfSpan });
  const lowest = bottomDeadCentre(crank).height - lowestPointDepth;
  requireThat(
    lowest > 0,
    "lowestPointDepth",
    lowestPointDepth,
    `less than the pin height at bottom dead centre ${bottomDeadCentre(crank).height}`,
  );

  const leftEnd = crank.pinLineOffset - lowestHalfWidth;
  const rightEnd = crank.pinLineOffset + lowestHalfWidth;
  // A point of the edge is named by its direction from the crank axis. Within the span the point nearest to
  // straight up is the nearest to the axis; no point within the span leaves the rim free.
  const clearanceAt = (angle: number): number => {
    const height = pinHeight(crank, angle) - lowestPointDepth;
    const towards = angle - Math.PI;
    const from = Math.max(towards - counterweightHalfSpan, Math.atan2(leftEnd, height));
    const to = Math.min(towards + counterweightHalfSpan, Math.atan2(rightEnd, height));
    if (from > to) return Number.POSITIVE_INFINITY;
    return height / Math.cos(Math.min(to, Math.max(from, 0))) - counterweightRadius;
  };

  const widest = Math.atan2(Math.max(-leftEnd, rightEnd), lowest);
  const reach = counterweightHalfSpan + widest;
  // Four grid cells at least within the span, so that a narrow counterweight is not stepped over.
  const steps = Math.max(180, Math.ceil((4 * reach) / counterweightHalfSpan));
  const found = greatestBetween((angle) => -clearanceAt(angle), Math.PI - reach, Math.PI + reach, steps);
  return { clearance: -found.value, angle: found.at };
}
