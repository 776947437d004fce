import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import type { RodPoint } from "./RodOutline.ts";

/** A point in the frame of one cylinder [m]: x across it, y along it, from the crank axis. */
export interface BlockPoint {
  readonly x: number;
  readonly y: number;
}

/** Place of the rod at one crank angle [rad]: big-end centre (x, y) [m], sine and cosine of the rod angle. */
export interface RodFrame {
  readonly angle: number;
  readonly x: number;
  readonly y: number;
  readonly sin: number;
  readonly cos: number;
}

/**
 * Place of the rod in the frame of the cylinder: C = (r sin(theta), r cos(theta)),
 * sin(phi) = (r sin(theta) - e) / l. It does not check the mechanism, as a sweep asks for thousands
 * of frames of one mechanism: check it once with requireSliderCrank.
 * @param crank the mechanism
 * @param angle crank angle [rad], 0 with the throw along the cylinder, positive with rotation
 * @returns centre of the big end, and sine and cosine of the rod angle
 * @throws never: unchecked, see above
 *
 * Source: plane geometry.
 */
export function rodFrame(crank: SliderCrank, angle: number): RodFrame {
  const x = crank.throwRadius * Math.sin(angle);
  const sin = (x - crank.pinLineOffset) / crank.rodLength;
  return { angle, x, y: crank.throwRadius * Math.cos(angle), sin, cos: Math.sqrt(1 - sin * sin) };
}

/**
 * A point of the rod in the frame of the cylinder: C + u d + v n with d = (-sin(phi), cos(phi)) along
 * the rod towards the pin and n = (cos(phi), sin(phi)) across it.
 * @param frame place of the rod
 * @param point point of the rod
 * @returns the point in the frame of the cylinder [m]
 * @throws never: any point will do
 *
 * Source: plane geometry.
 */
export function rodPointInBlock(frame: RodFrame, { u, v }: RodPoint): BlockPoint {
  return { x: frame.x - u * frame.sin + v * frame.cos, y: frame.y + u * frame.cos + v * frame.sin };
}
