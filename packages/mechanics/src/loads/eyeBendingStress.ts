import { positive, requireAll } from "../check/requireAll.ts";
import { type CurvedSection, curvedBeamStress, type SideStresses } from "./curvedBeamStress.ts";
import { heldRing, type RingPressure } from "./heldRing.ts";

/** Sections that are looked at from the middle of the loaded half to the last one: about a degree apart. */
const SECTIONS = 120;

/** An eye of a rod that its pin pulls. */
export interface PulledEye {
  /** [N], > 0 */
  readonly force: number;
  readonly section: CurvedSection;
  readonly pressure: RingPressure;
  /** where the eye runs into stiff metal, from the middle of the loaded half [rad], pi/2 to pi */
  readonly heldAngle: number;
  /** last section to look at, from the same middle [rad], 0 for the middle alone up to the held angle */
  readonly lastAngle: number;
}

/**
 * Greatest tensile stresses at the inside and at the outside of a rod's eye that its pin pulls, over the sections
 * from the middle of the loaded half to the last one: forces by `heldRing`, stresses by `curvedBeamStress`. The pin
 * is taken not to stiffen the eye, and the eye has one section.
 * @param eye pull and shape
 * @returns greatest stress of each side [Pa], + tension
 * @throws RangeError when a value is out of range
 *
 * Source: as `heldRing` and `curvedBeamStress`.
 */
export function eyeBendingStress(eye: PulledEye): SideStresses {
  const { force, section, pressure, heldAngle, lastAngle } = eye;
  const { innerRadius, depth } = section;
  requireAll(positive, { force, innerRadius, depth });
  requireAll({ atLeast: Math.PI / 2, atMost: Math.PI }, { heldAngle });
  requireAll({ atLeast: 0, atMost: heldAngle }, { lastAngle });
  const load = heldRing({ force, radius: innerRadius + depth / 2, pressure, heldAngle });
  let greatest: SideStresses = { inner: Number.NEGATIVE_INFINITY, outer: Number.NEGATIVE_INFINITY };
  for (let i = 0; i <= SECTIONS; i++) {
    const { inner, outer } = curvedBeamStress(section, load((i * lastAngle) / SECTIONS));
    greatest = { inner: Math.max(greatest.inner, inner), outer: Math.max(greatest.outer, outer) };
  }
  return greatest;
}
