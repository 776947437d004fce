import { finite, notNegative, requireAll, requireThat } from "../check/requireAll.ts";
import { requireSliderCrank, type SliderCrank } from "../kinematics/SliderCrank.ts";

/** Piston, pin, rings and small end of one cylinder, and where its throw and its bank lie. */
export interface ReciprocatingMass {
  readonly crank: SliderCrank;
  /** reciprocating mass of the cylinder [kg], >= 0 */
  readonly mass: number;
  /** angle of its crankpin on the crankshaft [rad], positive with rotation */
  readonly pinAngle: number;
  /** angle of its axis from the engine's reference axis [rad], positive with rotation */
  readonly bankAngle: number;
  /** position of its plane along the crankshaft [m] from the point the couples are taken about */
  readonly axialPosition: number;
}

/** A mass fixed to the crankshaft: a throw with the big ends on it, a counterweight, a heavy slug. */
export interface RevolvingMass {
  /** [kg], >= 0; a mass that is cut away stands opposite, as a mass there */
  readonly mass: number;
  /** distance of its centre from the crank axis [m], >= 0 */
  readonly radius: number;
  /** its angle on the crankshaft [rad], measured as pinAngle */
  readonly angle: number;
  /** position of its centre along the crankshaft [m], measured as for the cylinders */
  readonly axialPosition: number;
}

/** All that moves in an engine: pistons in their banks and masses on the crankshaft. */
export interface MovingMasses {
  readonly reciprocating: readonly ReciprocatingMass[];
  readonly revolving: readonly RevolvingMass[];
}

/**
 * Checks masses fixed to the crankshaft.
 * @param masses the masses, may be none
 * @throws RangeError naming the mass and the value that is out of range
 *
 * Source: definition.
 */
export function requireRevolvingMasses(masses: readonly RevolvingMass[]): void {
  masses.forEach(({ mass, radius, angle, axialPosition }, i) => {
    requireAll(notNegative, { [`revolving[${i}].mass`]: mass, [`revolving[${i}].radius`]: radius });
    requireAll(finite, {
      [`revolving[${i}].angle`]: angle,
      [`revolving[${i}].axialPosition`]: axialPosition,
    });
  });
}

/**
 * Checks what moves in an engine.
 * @param masses pistons and masses on the crankshaft, at least one in all
 * @throws RangeError when there is none, a mechanism cannot turn or a value is out of range
 *
 * Source: definition.
 */
export function requireMovingMasses({ reciprocating, revolving }: MovingMasses): void {
  const count = reciprocating.length + revolving.length;
  requireThat(count > 0, "reciprocating and revolving", count, "at least one mass");
  reciprocating.forEach(({ crank, mass, pinAngle, bankAngle, axialPosition }, i) => {
    requireSliderCrank(crank);
    requireAll(notNegative, { [`reciprocating[${i}].mass`]: mass });
    requireAll(finite, {
      [`reciprocating[${i}].pinAngle`]: pinAngle,
      [`reciprocating[${i}].bankAngle`]: bankAngle,
      [`reciprocating[${i}].axialPosition`]: axialPosition,
    });
  });
  requireRevolvingMasses(revolving);
}
