import { positive, requireAll } from "../check/requireAll.ts";

/** What main journal and crankpin share, seen along the crankshaft. */
export interface OverlapSection {
  /** area that both cover [m2]; 0 when they do not overlap */
  readonly area: number;
  /** polar second moment about the middle of that area [m4] */
  readonly polarMoment: number;
  /** torsion constant [m4] */
  readonly torsionConstant: number;
}

const NOTHING: OverlapSection = { area: 0, polarMoment: 0, torsionConstant: 0 };

/** Area, first and polar second moment about the circle's middle of what lies beyond a chord. */
function segment(radius: number, halfAngle: number) {
  const [sine, cosine] = [Math.sin(halfAngle), Math.cos(halfAngle)];
  const share = halfAngle - sine * cosine;
  return {
    area: radius ** 2 * share,
    first: (2 / 3) * (radius * sine) ** 3,
    polar: (radius ** 4 / 6) * (3 * share + 2 * sine ** 3 * cosine),
  };
}

const halfAngleOf = (cosine: number) => Math.acos(Math.min(1, Math.max(-1, cosine)));

/**
 * The lens that main journal and crankpin both cover, seen along the crankshaft: two segments of circles. Its torsion
 * constant is A^4/(4 pi^2 I_p), exact for circles and ellipses and some 2 % low for a thin lens.
 * @param input.journalDiameter [m], > 0
 * @param input.crankpinDiameter [m], > 0
 * @param input.throwRadius [m], > 0
 * @returns area [m2], polar moment [m4] and torsion constant [m4]; zeros when they do not overlap
 * @throws RangeError when a value is not above zero
 *
 * Source: geometry; Saint-Venant's approximation, Timoshenko and Goodier, Theory of Elasticity, from memory.
 */
export function overlapSection(input: {
  readonly journalDiameter: number;
  readonly crankpinDiameter: number;
  readonly throwRadius: number;
}): OverlapSection {
  const { journalDiameter, crankpinDiameter, throwRadius } = input;
  requireAll(positive, { journalDiameter, crankpinDiameter, throwRadius });
  const [a, b] = [journalDiameter / 2, crankpinDiameter / 2];
  if (throwRadius >= a + b) return NOTHING;
  const onJournal = segment(a, halfAngleOf((throwRadius ** 2 + a ** 2 - b ** 2) / (2 * throwRadius * a)));
  const onCrankpin = segment(b, halfAngleOf((throwRadius ** 2 + b ** 2 - a ** 2) / (2 * throwRadius * b)));
  const area = onJournal.area + onCrankpin.area;
  // About the middle of the journal, by the parallel axis: the pin's segment lies towards it from the pin.
  const first = onJournal.first + throwRadius * onCrankpin.area - onCrankpin.first;
  const about =
    onJournal.polar +
    onCrankpin.polar -
    2 * throwRadius * onCrankpin.first +
    throwRadius ** 2 * onCrankpin.area;
  const polarMoment = about - first ** 2 / area;
  // A sliver of a few atoms, of which rounding leaves nothing.
  if (!(polarMoment > 0)) return NOTHING;
  return { area, polarMoment, torsionConstant: area ** 4 / (4 * Math.PI ** 2 * polarMoment) };
}

/**
 * Torsional stiffness of one web by the straight core that main journal and crankpin share through it, G J/h. The web
 * around the core adds to it, so a web is at least about as stiff.
 * @param input.journalDiameter [m], > 0
 * @param input.crankpinDiameter [m], > 0
 * @param input.throwRadius [m], > 0
 * @param input.webThickness along the crankshaft [m], > 0
 * @param input.shearModulus [Pa], > 0
 * @returns stiffness [N m/rad]; 0 when journal and crankpin do not overlap
 * @throws RangeError when a value is not above zero
 *
 * Source: Saint-Venant's torsion, Timoshenko and Goodier, Theory of Elasticity, from memory.
 */
export function overlapStiffness(input: {
  readonly journalDiameter: number;
  readonly crankpinDiameter: number;
  readonly throwRadius: number;
  readonly webThickness: number;
  readonly shearModulus: number;
}): number {
  const { webThickness, shearModulus } = input;
  requireAll(positive, { webThickness, shearModulus });
  return (shearModulus * overlapSection(input).torsionConstant) / webThickness;
}
