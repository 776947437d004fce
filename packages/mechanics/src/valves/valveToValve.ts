import { finite, positive, requireAll } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { cycleSteps, fourStrokeCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { type Segment, segmentDistance } from "./segmentDistance.ts";
import { tiltRange } from "./shutValveDistance.ts";

/** One valve head in the plane of both stems, shut. */
export interface ValveHead {
  /** centre of the head's face across the cylinder [m], + towards the inlet side */
  readonly across: number;
  /** the same centre along the cylinder [m], + away from the crank */
  readonly height: number;
  /** stem against the cylinder axis [rad], within a quarter turn; + leans towards its own side as it rises */
  readonly tilt: number;
  /** radius of the head [m], > 0 */
  readonly radius: number;
  readonly curve: LiftCurve;
}

/** The head's face seen edge on; `side` is 1 for the inlet, -1 for the exhaust. */
function face({ across, height, tilt, radius }: ValveHead, lift: number, side: 1 | -1): Segment {
  const [sine, cosine] = [side * Math.sin(tilt), Math.cos(tilt)];
  const [x, y] = [across - lift * sine, height - lift * cosine];
  return {
    ax: x - radius * cosine,
    ay: y + radius * sine,
    bx: x + radius * cosine,
    by: y - radius * sine,
  };
}

/**
 * Least distance between the heads of an inlet and an exhaust valve over the whole cycle, at equal crank
 * angles. Both stems lie in one plane and the heads count as lines: take stem clearance and rock, 0.2 to
 * 0.4 mm (common practice), and the thickness of the heads' margins off.
 * @param input.inlet the inlet valve
 * @param input.exhaust the exhaust valve, mirrored: its tilt is + towards its own side
 * @returns distance [m], - when they clash, and the crank angle [rad] from overlap top dead centre
 * @throws RangeError when a value is out of range
 *
 * Source: plane geometry.
 */
export function valveToValve(input: { inlet: ValveHead; exhaust: ValveHead }): {
  clearance: number;
  angle: number;
} {
  const { inlet, exhaust } = input;
  for (const { across, height, tilt, radius } of [inlet, exhaust]) {
    requireAll(finite, { across, height });
    requireAll(tiltRange, { tilt });
    requireAll(positive, { radius });
  }
  const distance = (angle: number): number =>
    segmentDistance(
      face(inlet, inlet.curve.at(angle).lift, 1),
      face(exhaust, exhaust.curve.at(angle).lift, -1),
    );
  const half = fourStrokeCycle / 2;
  const least = leastOnInterval(distance, -half, half, cycleSteps);
  return { clearance: least.value, angle: least.at };
}
