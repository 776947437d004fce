import { finite, positive, requireAll } from "../check/requireAll.ts";

/** A rectangular section of a curved beam. */
export interface CurvedSection {
  /** radius of the concave side [m], > 0 */
  readonly innerRadius: number;
  /** depth along the radius [m], > 0 */
  readonly depth: number;
  /** width square to the plane of bending [m], > 0 */
  readonly width: number;
}

/** Stresses at the two sides of a section [Pa], + tension. */
export interface SideStresses {
  readonly inner: number;
  readonly outer: number;
}

/** Below this the series holds to the last digits, and the closed form begins to lose them. */
const SLENDER = 0.02;

/** How far the neutral axis lies from the middle of the section towards the centre of curvature [m]. */
function neutralOffset(middle: number, depth: number): number {
  const x = depth / (2 * middle);
  // middle (1 - x / atanh x): for slender beams two nearly equal radii would be taken from each other.
  return (
    middle * (x < SLENDER ? x ** 2 / 3 + (4 / 45) * x ** 4 + (44 / 945) * x ** 6 : 1 - x / Math.atanh(x))
  );
}

/**
 * Stresses at both sides of a curved beam of rectangular section under tension and bending (Winkler-Bach):
 * r_n = h / ln(r_o / r_i), e = r_c - r_n, sigma = N / A ± M c / (A e r). Plane sections stay plane; stress across the
 * beam and stress raisers are left out.
 * @param section sizes
 * @param load.tension along the beam at the middle of the section [N], - compression
 * @param load.moment about the middle of the section [N m], + when it straightens the beam
 * @returns stresses [Pa], + tension
 * @throws RangeError when a value is out of range
 *
 * Source: Shigley's Mechanical Engineering Design, curved beams in bending.
 */
export function curvedBeamStress(
  section: CurvedSection,
  load: { tension: number; moment: number },
): SideStresses {
  const { innerRadius, depth, width } = section;
  const { tension, moment } = load;
  requireAll(positive, { innerRadius, depth, width });
  requireAll(finite, { tension, moment });
  const [area, outerRadius, middle] = [depth * width, innerRadius + depth, innerRadius + depth / 2];
  const offset = neutralOffset(middle, depth);
  const perRadius = moment / (area * offset);
  return {
    inner: tension / area + (perRadius * (depth / 2 - offset)) / innerRadius,
    outer: tension / area - (perRadius * (depth / 2 + offset)) / outerRadius,
  };
}
