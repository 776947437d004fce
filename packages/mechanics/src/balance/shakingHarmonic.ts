import { finite, requireAll, requireThat } from "../check/requireAll.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
import { type MovingMasses, requireMovingMasses } from "./MovingMasses.ts";

/** One order of a force or couple in the plane across the crankshaft: cosine cos(k theta) + sine sin(k theta). */
export interface PlaneHarmonic {
  /** x and y at crank angle 0 [N] or [N m] */
  readonly cosine: readonly [number, number];
  /** x and y a quarter of the order's cycle later [N] or [N m] */
  readonly sine: readonly [number, number];
  /** greatest size over the cycle [N] or [N m] */
  readonly greatest: number;
  /** least size over the cycle [N] or [N m]: 0 in a fixed direction, equal to the greatest when it rotates evenly */
  readonly least: number;
  /** share that turns with the crankshaft [N] or [N m]: at first order counterweights can cancel it */
  readonly forward: number;
  /** share that turns against the crankshaft [N] or [N m]: a shaft turning backwards can cancel it */
  readonly backward: number;
}

type Pair = [number, number];

function planeHarmonic(cosine: Pair, sine: Pair): PlaneHarmonic {
  // Every ellipse is the sum of two vectors turning opposite ways; rotation runs from +y to +x.
  const forward = Math.hypot(cosine[1] + sine[0], cosine[0] - sine[1]) / 2;
  const backward = Math.hypot(cosine[1] - sine[0], cosine[0] + sine[1]) / 2;
  const [greatest, least] = [forward + backward, Math.abs(forward - backward)];
  return { cosine, sine, greatest, least, forward, backward };
}

/**
 * One order of the shaking force and couple of the whole engine, in the frame and on the terms of shakingForce.
 * @param input.reciprocating each cylinder
 * @param input.revolving each mass on the crankshaft; they act in the first order only
 * @param input.order cycles per turn of the crankshaft, a whole number from 1 to 1000
 * @param input.angularSpeed crankshaft speed [rad/s], constant
 * @returns force [N] and couple [N m] of that order
 * @throws RangeError when nothing moves, a mechanism cannot turn or a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function shakingHarmonic(input: MovingMasses & { order: number; angularSpeed: number }): {
  force: PlaneHarmonic;
  couple: PlaneHarmonic;
} {
  const { order, angularSpeed } = input;
  requireMovingMasses(input);
  requireAll(finite, { angularSpeed });
  requireThat(
    Number.isInteger(order) && order >= 1 && order <= 1000,
    "order",
    order,
    "a whole number from 1 to 1000",
  );
  const force: [Pair, Pair] = [
    [0, 0],
    [0, 0],
  ];
  const couple: [Pair, Pair] = [
    [0, 0],
    [0, 0],
  ];
  const add = (part: 0 | 1, x: number, y: number, axialPosition: number) => {
    force[part][0] += x;
    force[part][1] += y;
    couple[part][0] += axialPosition * x;
    couple[part][1] += axialPosition * y;
  };
  for (const { crank, mass, pinAngle, bankAngle, axialPosition } of input.reciprocating) {
    const { cosine, sine } = accelerationHarmonics({ crank, greatestOrder: order })[order - 1]!;
    const size = mass * crank.throwRadius * angularSpeed ** 2;
    const lead = order * (pinAngle - bankAngle);
    const parts = [
      size * (cosine * Math.cos(lead) + sine * Math.sin(lead)),
      size * (sine * Math.cos(lead) - cosine * Math.sin(lead)),
    ] as const;
    add(0, parts[0] * Math.sin(bankAngle), parts[0] * Math.cos(bankAngle), axialPosition);
    add(1, parts[1] * Math.sin(bankAngle), parts[1] * Math.cos(bankAngle), axialPosition);
  }
  for (const { mass, radius, angle, axialPosition } of order === 1 ? input.revolving : []) {
    const size = mass * radius * angularSpeed ** 2;
    add(0, size * Math.sin(angle), size * Math.cos(angle), axialPosition);
    add(1, size * Math.cos(angle), -size * Math.sin(angle), axialPosition);
  }
  return { force: planeHarmonic(...force), couple: planeHarmonic(...couple) };
}
