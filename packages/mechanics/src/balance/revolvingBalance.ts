import { finite, requireAll, requireThat } from "../check/requireAll.ts";
import { type RevolvingMass, requireRevolvingMasses } from "./MovingMasses.ts";

/** Mass times radius, and the angle on the crankshaft at which it lies. */
export interface Unbalance {
  /** [kg m], >= 0; divided by the radius of a balance mass it is the mass needed there */
  readonly unbalance: number;
  /** angle on the crankshaft [rad], above -pi up to pi, positive with rotation; 0 without unbalance */
  readonly angle: number;
}

/** Components of a vector [along angle 0, a quarter turn on with rotation]. */
type Pair = readonly [number, number];

function sumOf(masses: readonly RevolvingMass[], weight: (mass: RevolvingMass) => number): Pair {
  let [along, across] = [0, 0];
  for (const mass of masses) {
    const size = weight(mass) * mass.mass * mass.radius;
    along += size * Math.cos(mass.angle);
    across += size * Math.sin(mass.angle);
  }
  return [along, across];
}

function unbalanceOf([along, across]: Pair): Unbalance {
  // Adding zero turns -0 into 0, so that a vector along the axis never reads as -pi.
  return { unbalance: Math.hypot(along, across), angle: Math.atan2(across + 0, along + 0) };
}

/**
 * Static unbalance of masses on a shaft: the vector sum of mass times radius. The balance mass lies opposite,
 * at the angle plus pi.
 * @param revolving masses on the shaft, at least one; their axial positions do not count
 * @returns unbalance [kg m] and its angle [rad]
 * @throws RangeError when there is none or a value is out of range
 *
 * Source: Bevan, The Theory of Machines.
 */
export function staticUnbalance(revolving: readonly RevolvingMass[]): Unbalance {
  requireThat(revolving.length > 0, "revolving", revolving.length, "at least one mass");
  requireRevolvingMasses(revolving);
  return unbalanceOf(sumOf(revolving, () => 1));
}

/**
 * What must be added in two planes so that neither force nor couple is left over.
 * @param input.revolving masses on the shaft, at least one
 * @param input.firstPlane position of the first plane along the shaft [m], measured as the axial positions
 * @param input.secondPlane position of the second plane along the shaft [m], apart from the first
 * @returns balance to add in each plane [kg m] at its angle [rad]; taking mass away stands opposite
 * @throws RangeError when there is no mass, the planes coincide or a value is out of range
 *
 * Source: Bevan, The Theory of Machines.
 */
export function twoPlaneBalance(input: {
  revolving: readonly RevolvingMass[];
  firstPlane: number;
  secondPlane: number;
}): { first: Unbalance; second: Unbalance } {
  const { revolving, firstPlane, secondPlane } = input;
  requireThat(revolving.length > 0, "revolving", revolving.length, "at least one mass");
  requireRevolvingMasses(revolving);
  requireAll(finite, { firstPlane, secondPlane });
  requireThat(secondPlane !== firstPlane, "secondPlane", secondPlane, `apart from firstPlane ${firstPlane}`);
  const span = secondPlane - firstPlane;
  // Each plane takes the moment of all masses about the other plane.
  const first = sumOf(revolving, ({ axialPosition }) => (axialPosition - secondPlane) / span);
  const second = sumOf(revolving, ({ axialPosition }) => (firstPlane - axialPosition) / span);
  return { first: unbalanceOf(first), second: unbalanceOf(second) };
}
