import { notNegative, positive, requireAll, requireThat } from "../check/requireAll.ts";
import { bottomDeadCentre } from "../kinematics/deadCentres.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";

/**
 * Least distance of a lower edge of the piston, boss or skirt, from the rim of the counterweight, over the crank
 * angles at which the point in question lies within the counterweight's angular span. The counterweight is a
 * sector of a circle about the crank axis, centred opposite the crankpin. Whether the two meet at all also
 * depends on where they stand along the crank.
 * @param input.crank the mechanism
 * @param input.lowestPointDepth lowest points of the piston below the pin axis [m], > 0 and less than the
 * pin's height at bottom dead centre
 * @param input.lowestHalfWidth half width of that edge, symmetric about the pin line [m], >= 0
 * @param input.gapHalfWidth half width of the gap in its middle, as between the two sides of a skirt [m], 0 to
 * lowestHalfWidth; 0 when left out
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
  gapHalfWidth?: number;
  counterweightRadius: number;
  counterweightHalfSpan: number;
}): { clearance: number; angle: number } {
  const { crank, lowestPointDepth, lowestHalfWidth, counterweightRadius, counterweightHalfSpan } = input;
  const { gapHalfWidth = 0 } = input;
  requireAll(positive, { lowestPointDepth, counterweightRadius });
  requireAll(notNegative, { lowestHalfWidth });
  requireAll({ atLeast: 0, atMost: lowestHalfWidth }, { gapHalfWidth });
  requireAll({ atLeast: 0.01, below: Math.PI }, { counterweightHalfSpan });
  const lowest = bottomDeadCentre(crank).height - lowestPointDepth;
  requireThat(
    lowest > 0,
    "lowestPointDepth",
    lowestPointDepth,
    `less than the pin height at bottom dead centre ${bottomDeadCentre(crank).height}`,
  );

  const middle = crank.pinLineOffset;
  const leftEnd = middle - lowestHalfWidth;
  const rightEnd = middle + lowestHalfWidth;
  const edges =
    gapHalfWidth === 0
      ? [[leftEnd, rightEnd] as const]
      : ([
          [leftEnd, middle - gapHalfWidth],
          [middle + gapHalfWidth, rightEnd],
        ] as const);
  // A point of an edge is named by its direction from the crank axis. Within the span the point nearest to
  // straight up is the nearest to the axis; no point within the span leaves the rim free.
  const clearanceAt = (angle: number): number => {
    const height = pinHeight(crank, angle) - lowestPointDepth;
    const towards = angle - Math.PI;
    let least = Number.POSITIVE_INFINITY;
    for (const [left, right] of edges) {
      const from = Math.max(towards - counterweightHalfSpan, Math.atan2(left, height));
      const to = Math.min(towards + counterweightHalfSpan, Math.atan2(right, height));
      if (from <= to) least = Math.min(least, height / Math.cos(Math.min(to, Math.max(from, 0))));
    }
    return least - counterweightRadius;
  };

  const widest = Math.atan2(Math.max(-leftEnd, rightEnd), lowest);
  const reach = counterweightHalfSpan + widest;
  // Four grid cells at least within the span, so that a narrow counterweight is not stepped over.
  const steps = Math.max(180, Math.ceil((4 * reach) / counterweightHalfSpan));
  const found = leastOnInterval(clearanceAt, Math.PI - reach, Math.PI + reach, steps);
  return { clearance: found.value, angle: found.at };
}
