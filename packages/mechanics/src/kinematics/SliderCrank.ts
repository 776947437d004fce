import { finite, positive, requireAll, requireThat } from "../check/requireAll.ts";

/**
 * One throw, one connecting rod, one piston pin, in the frame of that cylinder: origin on the crank axis,
 * y along the cylinder away from the crank, x across it, positive towards the side the crankpin moves to
 * after top dead centre. The crank angle is 0 with the throw along +y and grows with rotation.
 */
export interface SliderCrank {
  /** crank throw r [m]: half the stroke on the crankshaft's sheet */
  readonly throwRadius: number;
  /** connecting rod length l between the centres of its bores [m] */
  readonly rodLength: number;
  /** lateral position e of the pin line from the crank axis [m], + on the +x side */
  readonly pinLineOffset: number;
}

/**
 * Checks that the mechanism can turn: r > 0, l > 0 and r + |e| < l.
 * @param crank the mechanism
 * @throws RangeError naming the dimension that is out of range
 *
 * Source: plane geometry.
 */
export function requireSliderCrank({ throwRadius, rodLength, pinLineOffset }: SliderCrank): void {
  requireAll(positive, { throwRadius, rodLength });
  requireAll(finite, { pinLineOffset });
  requireThat(
    throwRadius + Math.abs(pinLineOffset) < rodLength,
    "rodLength",
    rodLength,
    `more than throwRadius + |pinLineOffset| = ${throwRadius + Math.abs(pinLineOffset)}, or the crank cannot turn`,
  );
}
