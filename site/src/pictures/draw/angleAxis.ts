import { WIDTH } from "./Picture.tsx";

/** The axis of crank angle under a chart: a whole cycle from firing top dead centre. */
export const angleAxis = {
  left: 54,
  right: WIDTH - 10,
  /** [rad] */
  cycle: 4 * Math.PI,
  /** Where the axis is numbered, in degrees. */
  degrees: [0, 180, 360, 540, 720],
  /** Place of a crank angle [rad], whichever cycle it is of. */
  x(angle: number): number {
    const { left, right, cycle } = angleAxis;
    const within = angle === cycle ? cycle : ((angle % cycle) + cycle) % cycle;
    return left + (within / cycle) * (right - left);
  },
  /** Place of one of its numbers. */
  at(degree: number): number {
    return angleAxis.left + (degree / 720) * (angleAxis.right - angleAxis.left);
  },
};
