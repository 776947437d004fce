import { positive, requireAll, requireThat } from "../check/requireAll.ts";

/** Basic dimensions of a 60 degree screw thread. */
export interface ThreadGeometry {
  /** nominal diameter d [m] */
  readonly majorDiameter: number;
  /** pitch P [m] */
  readonly pitch: number;
  /** pitch diameter d2 [m] */
  readonly pitchDiameter: number;
  /** root diameter d3 of the bolt [m] */
  readonly rootDiameter: number;
  /** minor diameter D1 of the nut, the tapping size [m] */
  readonly internalMinorDiameter: number;
  /** diameter of the stress area, (d2 + d3) / 2 [m] */
  readonly stressDiameter: number;
  /** nominal stress area [m2] */
  readonly stressArea: number;
}

/**
 * Dimensions of a thread with the 60 degree basic profile, which metric and unified threads share. Root and
 * stress area follow the metric standard; for the stress area of a unified thread use {@link
 * stressAreaUnified}.
 * @param input.majorDiameter nominal diameter [m], > 0
 * @param input.pitch [m], > 0, so small that a root is left (below 0.6 of the diameter)
 * @returns diameters [m] and stress area [m2]
 * @throws RangeError when a value is out of range
 *
 * Source: ISO 68-1, ISO 724, ISO 898-1.
 */
export function threadGeometry(input: { majorDiameter: number; pitch: number }): ThreadGeometry {
  const { majorDiameter, pitch } = input;
  requireAll(positive, { majorDiameter, pitch });
  requireThat(pitch < 0.6 * majorDiameter, "pitch", pitch, `below 0.6 x the diameter ${majorDiameter}`);
  // H = height of the sharp 60 degree triangle; ISO 724 takes 3/8 H off each side for d2, ISO 898-1 a further
  // H/6 off the minor diameter for d3.
  const height = (Math.sqrt(3) / 2) * pitch;
  const pitchDiameter = majorDiameter - (3 / 4) * height;
  const internalMinorDiameter = majorDiameter - (5 / 4) * height;
  const rootDiameter = internalMinorDiameter - height / 6;
  const stressDiameter = (pitchDiameter + rootDiameter) / 2;
  return {
    majorDiameter,
    pitch,
    pitchDiameter,
    rootDiameter,
    internalMinorDiameter,
    stressDiameter,
    stressArea: (Math.PI / 4) * stressDiameter ** 2,
  };
}

/**
 * Tensile stress area of a unified thread by its own standard, (pi / 4)(D - 0.9743 P)^2.
 * @param input.majorDiameter nominal diameter [m], > 0
 * @param input.pitch one inch over the threads per inch [m], > 0
 * @returns stress area [m2]; 0.5-2 % below that of {@link threadGeometry}, whose root is less deep
 * @throws RangeError when a value is out of range
 *
 * Source: ASME B1.1.
 */
export function stressAreaUnified(input: { majorDiameter: number; pitch: number }): number {
  const { majorDiameter, pitch } = input;
  requireAll(positive, { majorDiameter, pitch });
  requireThat(pitch < 0.6 * majorDiameter, "pitch", pitch, `below 0.6 x the diameter ${majorDiameter}`);
  return (Math.PI / 4) * (majorDiameter - 0.9743 * pitch) ** 2;
}
