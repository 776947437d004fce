import { positive, requireAll } from "../check/requireAll.ts";

/** Tangent of the half angle of 30 degrees under which the pressed zone spreads. */
const SPREAD = Math.tan(Math.PI / 6);
/** A bolt head or washer face is about one and a half diameters wide. */
const FACE = 1.5;

/**
 * Compliance of clamped parts of one material: two frusta of 30 degrees that start under head and nut, of width
 * 1.5 d, and meet at half the grip,
 * 1/k with k = 0.5774 pi E d / (2 ln[5 (0.5774 l + 0.5 d)/(0.5774 l + 2.5 d)]).
 * Real bosses that are narrower than the frusta give more, by tens of per cent.
 * @param input.grip clamped length l [m], > 0
 * @param input.diameter of the bolt d [m], > 0
 * @param input.elasticModulus of the clamped parts E [Pa], > 0
 * @returns compliance [m/N]
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, joints - member stiffness.
 */
export function clampedCompliance(input: { grip: number; diameter: number; elasticModulus: number }): number {
  const { grip, diameter, elasticModulus } = input;
  requireAll(positive, { grip, diameter, elasticModulus });
  const spread = SPREAD * grip;
  const ratio = (5 * (spread + (FACE - 1) * diameter)) / (spread + (FACE + 1) * diameter);
  return (2 * Math.log(ratio)) / (SPREAD * Math.PI * elasticModulus * diameter);
}
