import { finite, notNegative, requireAll, requireCounts, requireThat } from "../check/requireAll.ts";
import type { LoadCycle } from "../loads/crankpinLoadCycle.ts";

/** A cap, or the half of a split case, under the load of its main bearing over the cycle. */
export interface CapCycle {
  /** load of the journal on its bearing [N], y along the line from which directions are counted */
  readonly load: LoadCycle;
  /** direction in which the cap comes off, from y towards x [rad] */
  readonly opening: number;
}

function requireCycle({ load, opening }: CapCycle): void {
  requireAll(finite, { opening });
  requireThat(load.x.length > 0, "load", load.x.length, "at least one sample");
  requireThat(load.x.length === load.y.length, "load", load.y.length, `${load.x.length} samples in y too`);
}

/** The share of the load that falls on the cap's half, by its part straight to the cap and its size along the joint [N]. */
const shareOf = (straight: number, across: number): number => 1 - Math.atan2(across, straight) / Math.PI;

/**
 * What one sample of the load gives the cap. The journal presses the half of the bearing about the load's direction as
 * a cosine, and the cap takes what falls on its own half: all of a load that points where it comes off, nothing of one
 * that points straight into the block, and no jump between.
 */
function partsAt({ load, opening }: CapCycle, i: number): { off: number; along: number } {
  const [x, y] = [load.x[i]!, load.y[i]!];
  const [sine, cosine] = [Math.sin(opening), Math.cos(opening)];
  const [straight, across] = [x * sine + y * cosine, Math.abs(x * cosine - y * sine)];
  const share = shareOf(straight, across);
  return { off: share * straight + across / Math.PI, along: share * across };
}

/**
 * Greatest pull of a main bearing's load on its cap, in the direction in which the cap comes off. A load F at an angle
 * psi from there pulls with F ((1 - psi/pi) cos psi + sin psi/pi).
 * @param cap load over the cycle [N] and direction [rad]
 * @returns [N], >= 0; 0 when the load only ever points straight into the block
 * @throws RangeError when a value is not finite or there are no samples
 *
 * Source: statics; pressure as a cosine over half the bearing, as handbooks take it, from memory.
 */
export function capPull(cap: CapCycle): number {
  requireCycle(cap);
  const { x, y } = cap.load;
  const sine = Math.sin(cap.opening);
  const cosine = Math.cos(cap.opening);
  let pull = 0;
  for (let i = 0; i < x.length; i++) {
    const straight = x[i]! * sine + y[i]! * cosine;
    const across = Math.abs(x[i]! * cosine - y[i]! * sine);
    // As partsAt; the share is at most the whole and only that of the greatest pulls is worked out. What is no number
    // is not passed over.
    if (Math.max(0, straight) + across / Math.PI <= pull) continue;
    pull = Math.max(pull, shareOf(straight, across) * straight + across / Math.PI);
  }
  requireAll(finite, { load: pull });
  return pull;
}

/**
 * Friction that holds a main cap along its joint over the load that pushes it there, at the moment of the cycle where
 * that is least. A load F at an angle psi from where the cap comes off pushes it along with F (1 - psi/pi) sin psi; the
 * rest falls on the block. Register, dowels and cross bolts are extra.
 * @param input.bolts of the cap, a whole number from 1
 * @param input.preload of one bolt, the least of its scatter [N], >= 0
 * @param input.friction between cap and block [-], >= 0
 * @param input load over the cycle [N] and direction [rad] as in {@link CapCycle}
 * @returns ratio [-]; - when the load lifts the cap, Infinity when nothing ever pushes it along
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1, slip of a clamped joint; pressure as for {@link capPull}.
 */
export function capSlipOverCycle(
  input: CapCycle & { readonly bolts: number; readonly preload: number; readonly friction: number },
): number {
  const { bolts, preload, friction, load } = input;
  requireCycle(input);
  requireCounts({ bolts });
  requireAll(notNegative, { preload, friction });
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < load.x.length; i++) {
    const { off, along } = partsAt(input, i);
    requireAll(finite, { load: off + along });
    if (along > 0) least = Math.min(least, (friction * (bolts * preload - off)) / along);
  }
  return least;
}
