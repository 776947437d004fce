/** Crank angle of one four-stroke cycle [rad]. */
export const fourStrokeCycle = 4 * Math.PI;

/** Cells of a sweep over the cycle: half a degree of crank. */
export const cycleSteps = 1440;

/**
 * The same position in the cycle, counted from a given angle.
 * @param angle crank angle [rad]
 * @param from start of the cycle [rad]
 * @returns crank angle [rad], from `from` up to but not including `from` + 4 pi
 *
 * Source: definition.
 */
export function withinCycle(angle: number, from: number): number {
  const turned = (angle - from) % fourStrokeCycle;
  const positive = turned < 0 ? turned + fourStrokeCycle : turned;
  // A tiny negative remainder rounds up to a whole cycle.
  return from + (positive < fourStrokeCycle ? positive : 0);
}
