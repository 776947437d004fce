import { positive, requireAll, requireThat } from "../check/requireAll.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { greatestBetween } from "../kinematics/greatestOverTurn.ts";
import { pinHeight } from "../kinematics/pinHeight.ts";
import { pistonVelocity } from "../kinematics/pistonVelocity.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/** A squish band over a piston near top dead centre. */
export interface SquishBand {
  readonly crank: SliderCrank;
  /** piston area A [m2], > 0 */
  readonly pistonArea: number;
  /** area of the band A_s [m2], > 0 and below the piston's */
  readonly bandArea: number;
  /** length of the edge over which the band empties into the chamber L_e [m], > 0 */
  readonly edgeLength: number;
  /** gap of the band at top dead centre q [m], > 0 */
  readonly gap: number;
  /** volume above the piston at top dead centre V_c [m3], more than the band holds then */
  readonly clearanceVolume: number;
  /** angular speed of the crankshaft [rad/s], > 0 */
  readonly angularSpeed: number;
}

function requireBand(band: SquishBand): void {
  const { pistonArea, bandArea, edgeLength, gap, clearanceVolume, angularSpeed } = band;
  requireAll(positive, { pistonArea, bandArea, edgeLength, gap, clearanceVolume, angularSpeed });
  requireThat(bandArea < pistonArea, "bandArea", bandArea, `less than the piston's area, ${pistonArea}`);
  const held = bandArea * gap;
  requireThat(
    clearanceVolume > held,
    "clearanceVolume",
    clearanceVolume,
    `more than the squish band holds, ${held}`,
  );
}

function velocityAt(band: SquishBand, top: number, angle: number): number {
  const { crank, pistonArea, bandArea, edgeLength, gap, clearanceVolume, angularSpeed } = band;
  const travel = top - pinHeight(crank, angle);
  const height = gap + travel;
  const volume = clearanceVolume + pistonArea * travel;
  const towardsHead = pistonVelocity(crank, angle, angularSpeed);
  return ((towardsHead * bandArea) / (edgeLength * height)) * (1 - (pistonArea * height) / volume);
}

/**
 * Speed at which the charge leaves the squish band, v_p (A_s / (L_e z)) (1 - A z / V) with z = q + s the gap and
 * V = V_c + A s the volume at that instant: the mass that the band loses while all of the charge has one density.
 * @param band the band, the mechanism and the speed
 * @param angle crank angle [rad] from the throw at its top
 * @returns speed [m/s], + out of the band, - back into it after top dead centre
 * @throws RangeError when a value is out of range
 *
 * Source: mass balance; Heywood, Internal Combustion Engine Fundamentals ch. 8 has the same for a bowl.
 */
export function squishVelocity(band: SquishBand, angle: number): number {
  requireBand(band);
  return velocityAt(band, topDeadCentre(band.crank).height, angle);
}

/**
 * Greatest squish velocity on the way up, and where.
 * @param band the band, the mechanism and the speed
 * @returns speed [m/s] and crank angle [rad], - before the throw's top
 * @throws RangeError when a value is out of range
 *
 * Source: as for squishVelocity.
 */
export function greatestSquishVelocity(band: SquishBand): { velocity: number; angle: number } {
  requireBand(band);
  const { angle: topAngle, height } = topDeadCentre(band.crank);
  const { at, value } = greatestBetween(
    (angle) => velocityAt(band, height, angle),
    topAngle - Math.PI / 2,
    topAngle,
  );
  return { velocity: value, angle: at };
}
