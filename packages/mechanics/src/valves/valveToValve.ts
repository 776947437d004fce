import { finite, positive, requireAll } from "../check/requireAll.ts";
import { leastOnInterval } from "../outline/leastOnInterval.ts";
import { apartAlong, type Direction, type Disc, discDistance } from "./discDistance.ts";
import { cycleSteps, fourStrokeCycle } from "./fourStrokeCycle.ts";
import type { LiftCurve } from "./LiftCurve.ts";
import { type Segment, segmentDistance } from "./segmentDistance.ts";
import { tiltRange } from "./shutValveDistance.ts";

/** One valve head, shut; its stem leans square to the crankshaft. */
export interface ValveHead {
  /** centre of the head's face across the cylinder [m], + towards the inlet side */
  readonly across: number;
  /** the same centre along the crankshaft, from the cylinder axis [m] */
  readonly along: number;
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

/** The head as a disc in space: x across, y along the crankshaft, z along the cylinder. */
function headDisc({ across, along, height, tilt, radius }: ValveHead, lift: number, side: 1 | -1): Disc {
  const lean = side * tilt;
  return {
    x: across - lift * Math.sin(lean),
    y: along,
    z: height - lift * Math.cos(lean),
    tilt: lean,
    radius,
  };
}

/**
 * Distance of both heads by crank angle, as discs in space. A direction in which they lay apart before is a bound from
 * below: where that is no less than the least found so far, it stands for the distance and saves the search.
 */
function inSpace({ inlet, exhaust }: { inlet: ValveHead; exhaust: ValveHead }): (angle: number) => number {
  let least = Number.POSITIVE_INFINITY;
  let towards: Direction = { turn: Math.PI / 2, rise: 0 };
  // Over much of the cycle both valves are shut, and stand as they stood before.
  let last = { open: -1, other: -1, value: 0 };
  const distance = (angle: number): number => {
    const [open, other] = [inlet.curve.at(angle).lift, exhaust.curve.at(angle).lift];
    if (open !== last.open || other !== last.other) last = { open, other, value: between(open, other) };
    return last.value;
  };
  const between = (open: number, other: number): number => {
    const first = headDisc(inlet, open, 1);
    const second = headDisc(exhaust, other, -1);
    const bound = apartAlong(first, second, towards);
    if (bound >= least) return bound;
    const found = discDistance(first, second, towards);
    towards = found.towards;
    least = Math.min(least, found.value);
    return found.value;
  };
  // In the overlap the heads are mostly nearest: begun there, nearly all other angles are saved.
  distance(0);
  return distance;
}

/**
 * Least distance between the heads of an inlet and an exhaust valve over the whole cycle, at equal crank
 * angles. Both stems lean square to the crankshaft and the heads count as thin discs: take stem clearance and rock,
 * 0.2 to 0.4 mm (common practice), and the thickness of the heads' margins off.
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
  for (const { across, along, height, tilt, radius } of [inlet, exhaust]) {
    requireAll(finite, { across, along, height });
    requireAll(tiltRange, { tilt });
    requireAll(positive, { radius });
  }
  // Stems in one plane: both heads seen edge on, as lines, which is far quicker and the same.
  const inPlane = (angle: number): number =>
    segmentDistance(
      face(inlet, inlet.curve.at(angle).lift, 1),
      face(exhaust, exhaust.curve.at(angle).lift, -1),
    );
  const half = fourStrokeCycle / 2;
  const distance = inlet.along === exhaust.along ? inPlane : inSpace(input);
  const least = leastOnInterval(distance, -half, half, cycleSteps);
  return { clearance: least.value, angle: least.at };
}
