import { requireThat } from "../check/requireAll.ts";
import { pistonAcceleration } from "../kinematics/pistonAcceleration.ts";
import { requireSliderCrank, type SliderCrank } from "../kinematics/SliderCrank.ts";

/** One order of the piston's acceleration. */
export interface AccelerationHarmonic {
  /** cycles per turn of the crankshaft k, a whole number from 1 */
  readonly order: number;
  /** coefficient of cos(k theta) [-] */
  readonly cosine: number;
  /** coefficient of sin(k theta) [-]; 0 without an offset of the pin line */
  readonly sine: number;
}

/** Aliases of the sampled motion smaller than exp(-45) = 3e-20 vanish in the rounding of the numbers. */
const ALIAS_EXPONENT = 45;
/** Nearer than this to a rod as short as the throw the acceleration has a spike no low order describes. */
const LEAST_REACH = 1.001;
const GREATEST_ORDER = 1000;

/**
 * Harmonics of the piston's acceleration, exact to the rounding of the numbers and to any order:
 * -a / (r omega^2) = sum over k of cosine_k cos(k theta) + sine_k sin(k theta), theta the crank angle of that
 * cylinder. Without an offset the first order is 1, the second r/l + (r/l)^3/4 + ..., and odd orders above the
 * first are zero. The mean over the turn is zero.
 * @param input.crank the mechanism; (l - |e|) / r at least 1.001
 * @param input.greatestOrder last order wanted, a whole number from 1 to 1000
 * @returns the orders from 1 to the greatest
 * @throws RangeError when the mechanism cannot turn or a value is out of range
 *
 * Source: plane geometry; Fourier sum over equal steps of the turn, whose error falls as exp(-N arcosh((l - |e|)/r)).
 */
export function accelerationHarmonics(input: {
  crank: SliderCrank;
  greatestOrder: number;
}): AccelerationHarmonic[] {
  const { crank, greatestOrder } = input;
  requireSliderCrank(crank);
  requireThat(
    Number.isInteger(greatestOrder) && greatestOrder >= 1 && greatestOrder <= GREATEST_ORDER,
    "greatestOrder",
    greatestOrder,
    `a whole number from 1 to ${GREATEST_ORDER}`,
  );
  // The motion as a function of a complex angle is smooth up to where the rod would lie square to the cylinder.
  const reach = (crank.rodLength - Math.abs(crank.pinLineOffset)) / crank.throwRadius;
  requireThat(reach >= LEAST_REACH, "(rodLength - |pinLineOffset|) / throwRadius", reach, "at least 1.001");
  const steps = 2 * greatestOrder + 2 + Math.ceil(ALIAS_EXPONENT / Math.acosh(reach));
  const samples = Array.from(
    { length: steps },
    (_, i) => -pistonAcceleration(crank, (2 * Math.PI * i) / steps, 1) / crank.throwRadius,
  );
  return Array.from({ length: greatestOrder }, (_, index) => {
    const order = index + 1;
    let [cosine, sine] = [0, 0];
    samples.forEach((sample, i) => {
      // Whole turns are taken out first, so that high orders lose no digits in a large angle.
      const angle = (2 * Math.PI * ((order * i) % steps)) / steps;
      cosine += (2 / steps) * sample * Math.cos(angle);
      sine += (2 / steps) * sample * Math.sin(angle);
    });
    return { order, cosine, sine };
  });
}
