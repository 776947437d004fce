import { finite, notNegative, positive, requireAll } from "../check/requireAll.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { requireSliderCrank } from "../kinematics/SliderCrank.ts";
import { boreArea } from "../volumes/boreArea.ts";
import type { RunningCylinder } from "./RunningCylinder.ts";

/** Forces of one cylinder at one crank angle. */
export interface CrankForces {
  /** along the rod [N], compression + */
  readonly rod: number;
  /** angular speed of the rod over that of the crankshaft [-], + counter-clockwise */
  readonly swing: number;
  /** piston on the cylinder [N], + on the thrust side */
  readonly side: number;
  /** rod on the crankpin [N]: size, and parts across and along the cylinder, as in `crankpinLoad` */
  readonly crankpin: { readonly x: number; readonly y: number; readonly magnitude: number };
  /** on the crankshaft [N m], + with rotation */
  readonly torque: number;
}

/** A force in the plane. */
class PlaneForce {
  readonly x: number;
  readonly y: number;
  constructor(x: number, y: number) {
    this.x = x;
    this.y = y;
  }
  get magnitude(): number {
    return Math.hypot(this.x, this.y);
  }
}

/** Forces worked out when they are asked for: a search over the cycle wants one. A class makes each angle cheap. */
class ForcesAt implements CrankForces {
  readonly rod: number;
  readonly swing: number;
  private readonly rodSine: number;
  private readonly rodCosine: number;
  /** crankpin across and along the cylinder [m] */
  private readonly across: number;
  private readonly along: number;
  /** rotating rod mass times the speed squared [N/m] */
  private readonly pull: number;
  constructor(
    rod: number,
    swing: number,
    rodSine: number,
    rodCosine: number,
    across: number,
    along: number,
    pull: number,
  ) {
    this.rod = rod;
    this.swing = swing;
    this.rodSine = rodSine;
    this.rodCosine = rodCosine;
    this.across = across;
    this.along = along;
    this.pull = pull;
  }
  get side(): number {
    return this.rod * this.rodSine;
  }
  get crankpin(): PlaneForce {
    return new PlaneForce(
      this.rod * this.rodSine + this.pull * this.across,
      -this.rod * this.rodCosine + this.pull * this.along,
    );
  }
  get torque(): number {
    return this.rod * (this.across * this.rodCosine + this.along * this.rodSine);
  }
}

/**
 * {@link crankForces} by the pressure and by sine and cosine of the crank angle, for who has these in a table.
 * @param cylinder what runs and how fast
 * @returns the forces by pressure [Pa], sine and cosine
 * @throws RangeError when a value is out of range, at once or, for the pressure, when it is given
 *
 * Source: as {@link crankForces}.
 */
export function crankForcesBy(
  cylinder: RunningCylinder,
): (pressure: number, sine: number, cosine: number) => CrankForces {
  const { crank, bore, casePressure, reciprocatingMass, rotatingRodMass, angularSpeed } = cylinder;
  requireSliderCrank(crank);
  requireAll(positive, { bore });
  requireAll(notNegative, { casePressure, reciprocatingMass, rotatingRodMass });
  requireAll(finite, { angularSpeed });
  const { throwRadius, rodLength, pinLineOffset } = crank;
  const area = boreArea(bore);
  const square = angularSpeed ** 2;
  const pull = rotatingRodMass * square;
  return (pressure, sine, cosine) => {
    if (!(pressure >= 0)) requireAll(notNegative, { pressure });
    const [across, along] = [throwRadius * sine, throwRadius * cosine];
    const rodSine = (across - pinLineOffset) / rodLength;
    const rodCosine = Math.sqrt(1 - rodSine * rodSine);
    const swing = along / (rodLength * rodCosine);
    const acceleration =
      square * (-along + (across * rodSine) / rodCosine - (swing * swing * rodLength) / rodCosine);
    const rod = (reciprocatingMass * acceleration + (pressure - casePressure) * area) / rodCosine;
    return new ForcesAt(rod, swing, rodSine, rodCosine, across, along, pull);
  };
}

/**
 * Forces of gas and inertia in one cylinder at any crank angle. Friction and gravity are left out; the rod is two
 * masses, at its ends. The cylinder is checked once, for sweeps over the cycle; what comes out is that of
 * `rodAxialForce`, `sideThrust`, `crankpinLoad` and `crankTorque`.
 * @param cylinder what runs and how fast
 * @returns the forces by crank angle [rad]
 * @throws RangeError when a value is out of range, at once or, for the pressure, at its angle
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice.
 */
export function crankForces(cylinder: RunningCylinder): (angle: number) => CrankForces {
  const { pressureAt } = cylinder;
  const forces = crankForcesBy(cylinder);
  return (angle) => forces(pressureAt(angle), Math.sin(angle), Math.cos(angle));
}

/** Two degrees of crank: forces change little within it, and the peak is refined. */
const CELLS = 360;
const CYCLE = 4 * Math.PI;

/**
 * Greatest value over a whole cycle of two turns, from bottom dead centre before firing.
 * @param value by crank angle [rad]
 * @returns the value and the crank angle [rad] where it lies, -pi up to 3 pi
 * @throws never itself; what `value` throws comes through
 *
 * Source: as {@link greatestBetween}.
 */
export function greatestOverCycle(value: (angle: number) => number): { angle: number; value: number } {
  const { at, value: greatest } = greatestBetween(value, -Math.PI, CYCLE - Math.PI, CELLS);
  return { angle: at, value: greatest };
}

/**
 * Mean over a whole cycle of two turns, by the trapezoid rule.
 * @param value by crank angle [rad]
 * @returns mean, in the unit of the value
 * @throws never itself; what `value` throws comes through
 *
 * Source: trapezoid rule, which is exact for the smooth part of a period.
 */
export function meanOverCycle(value: (angle: number) => number): number {
  let sum = 0;
  for (let i = 0; i < CELLS; i++) sum += value(-Math.PI + (i * CYCLE) / CELLS);
  return sum / CELLS;
}
