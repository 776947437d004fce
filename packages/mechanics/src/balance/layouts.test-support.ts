import { fc } from "@fast-check/vitest";
import { between, cranks, deg, mm, rpm } from "../check/support.test-support.ts";
import type { ReciprocatingMass } from "./MovingMasses.ts";

export const exampleCrank = { throwRadius: 45 * mm, rodLength: 145 * mm, pinLineOffset: 0 };
export const exampleMass = 0.6;
export const spacing = 110 * mm;
export const speed = 6000 * rpm;
/** m r omega^2 of one cylinder [N]. */
export const unit = exampleMass * exampleCrank.throwRadius * speed ** 2;

/** Cylinders of the example's size, one throw for each pin angle, one cylinder on it for each bank. */
export function engine(
  pinAngles: readonly number[],
  bankAngles: readonly number[] = [0],
  crank = exampleCrank,
): ReciprocatingMass[] {
  return pinAngles.flatMap((pin, i) =>
    bankAngles.map((bank) => ({
      crank,
      mass: exampleMass,
      pinAngle: pin * deg,
      bankAngle: bank * deg,
      axialPosition: (i - (pinAngles.length - 1) / 2) * spacing,
    })),
  );
}

export const inlineThree = [0, 240, 120];
export const inlineFour = [0, 180, 180, 0];
export const inlineSix = [0, 120, 240, 240, 120, 0];
export const crossPlane = [0, 90, 270, 180];

/** Any arrangement of cylinders and masses on the crankshaft. */
export const anyEngine = fc.record({
  reciprocating: fc.array(
    fc.record({
      crank: cranks,
      mass: between(0.2, 1.5),
      pinAngle: between(-7, 7),
      bankAngle: between(-3, 3),
      axialPosition: between(-0.4, 0.4),
    }),
    { minLength: 1, maxLength: 6 },
  ),
  revolving: fc.array(
    fc.record({
      mass: between(0, 3),
      radius: between(0, 0.1),
      angle: between(-7, 7),
      axialPosition: between(-0.4, 0.4),
    }),
    { maxLength: 4 },
  ),
});
