import { finite, positive, requireAll } from "../check/requireAll.ts";
import type { LoadCycle } from "../loads/crankpinLoadCycle.ts";
import { bogackiShampine } from "./bogackiShampine.ts";
import { mobilityAt } from "./shortBearingMobility.ts";

/** A plain bearing as a film sees it. */
export interface FilmBearing {
  /** dynamic viscosity of the oil in the film [Pa s], > 0 */
  readonly viscosity: number;
  /** of the crankshaft [rad/s], > 0 */
  readonly angularSpeed: number;
  /** [m], > 0 */
  readonly journalDiameter: number;
  /** effective length of the shell, or of each land beside a full groove [m], > 0 */
  readonly length: number;
  /** half the diametral clearance [m], > 0 */
  readonly radialClearance: number;
}

/** A plain bearing whose load changes with the crank angle. Axes stand still: x across, y along a cylinder. */
export interface CycleBearing extends FilmBearing {
  /** force on the journal, or on one land's share of it [N], at a crank angle [rad] */
  readonly load: (angle: number) => { readonly x: number; readonly y: number };
  /** mean of the angular speeds of journal and shell over the crankshaft's [-], + counter-clockwise */
  readonly meanTurning: (angle: number) => number;
}

/** The same, with load and turning in evenly spaced samples over two turns from crank angle 0, straight between them. */
export interface SampledBearing extends FilmBearing {
  readonly load: LoadCycle;
  /** as for a `CycleBearing`, one for each sample of the load; or one for the whole cycle */
  readonly meanTurning: Float64Array | number;
}

/** A working cycle of four strokes. */
const CYCLE = 4 * Math.PI;
/** The journal starts centred one turn early and has forgotten it by then (test). */
const RUN_IN = 2 * Math.PI;
/** Offset over clearance by which a cycle's end may miss its start. */
const CLOSED = 2e-3;
const MOST_CYCLES = 6;
/** Error of a step, as offset over clearance. */
const TOLERANCE = 5e-5;
const WIDEST_STEP = Math.PI / 20;

/** What turns and loads the bearing at a crank angle: written as load across and along [N] and mean turning [-]. */
type Read = (angle: number, into: Float64Array) => void;

function leastFilm(bearing: FilmBearing, read: Read): { film: number; angle: number } {
  const { viscosity, angularSpeed, journalDiameter, length, radialClearance } = bearing;
  requireAll(positive, { viscosity, angularSpeed, journalDiameter, length, radialClearance });
  const lengthRatio = length / journalDiameter;
  const scale = (2 * radialClearance) ** 2 / (viscosity * length * journalDiameter ** 3 * angularSpeed);
  const now = new Float64Array(3);

  const slope = (angle: number, x: number, y: number, into: Float64Array) => {
    read(angle, now);
    const [forceX, forceY, turning] = [now[0]!, now[1]!, now[2]!];
    const size = Math.sqrt(forceX * forceX + forceY * forceY);
    if (!Number.isFinite(size + turning)) requireAll(finite, { load: size, meanTurning: turning });
    into[0] = -turning * y;
    into[1] = turning * x;
    if (size === 0) return;
    const [ux, uy] = [forceX / size, forceY / size];
    // A trial step may overshoot the shell; its error then sends it back.
    const along = Math.min(x * ux + y * uy, 1 - Number.EPSILON);
    const mobility = mobilityAt(along, y * ux - x * uy, lengthRatio);
    into[0] += scale * size * (mobility.along * ux - mobility.across * uy);
    into[1] += scale * size * (mobility.along * uy + mobility.across * ux);
  };

  let [x, y] = [0, 0];
  let [square, at] = [0, 0];
  const watch = (angle: number, atX: number, atY: number) => {
    const here = atX * atX + atY * atY;
    if (here > square) [square, at] = [here, angle];
  };
  [x, y] = bogackiShampine(slope, { from: -RUN_IN, to: 0, x, y, tolerance: TOLERANCE, widest: WIDEST_STEP });
  for (let cycle = 0; cycle < MOST_CYCLES; cycle++) {
    const [fromX, fromY] = [x, y];
    [square, at] = [0, 0];
    const span = { from: 0, to: CYCLE, x, y, tolerance: TOLERANCE, widest: WIDEST_STEP };
    [x, y] = bogackiShampine(slope, span, watch);
    if (Math.hypot(x - fromX, y - fromY) < CLOSED) break;
  }
  return { film: radialClearance * (1 - Math.sqrt(square)), angle: at };
}

/**
 * Least oil film of a bearing over a working cycle by the mobility method: the path of the journal in its
 * clearance, d(e)/dt = |F| (2c/D)^2/(mu L D) M + turning x e, until it closes. Starvation, tilt and the give of
 * housing and journal are left out, so the value is for comparison with others computed in the same way.
 * @param bearing the bearing, its load and its turning over two turns
 * @returns least film [m] and the crank angle [rad] where it lies, 0 up to 4 pi
 * @throws RangeError when a value is out of range
 *
 * Source: Booker's mobility method (from memory); Taylor, The Internal-Combustion Engine in Theory and Practice, for
 * the load.
 */
export function leastFilmOverCycle(bearing: CycleBearing): { film: number; angle: number } {
  const { load, meanTurning } = bearing;
  return leastFilm(bearing, (angle, into) => {
    const force = load(angle);
    into[0] = force.x;
    into[1] = force.y;
    into[2] = meanTurning(angle);
  });
}

/**
 * {@link leastFilmOverCycle} of a bearing whose load is sampled: the same value, some times sooner.
 * @param bearing the bearing, samples of its load and its turning over two turns
 * @returns least film [m] and the crank angle [rad] where it lies, 0 up to 4 pi
 * @throws RangeError when a value is out of range
 *
 * Source: as {@link leastFilmOverCycle}.
 */
export function leastFilmOverSamples(bearing: SampledBearing): { film: number; angle: number } {
  const { load, meanTurning } = bearing;
  const { x, y } = load;
  const count = x.length;
  const perRadian = count / CYCLE;
  const turning = typeof meanTurning === "number" ? new Float64Array(count).fill(meanTurning) : meanTurning;
  return leastFilm(bearing, (angle, into) => {
    // As cycleValue, for all of them at once.
    const place = angle * perRadian;
    const below = Math.floor(place);
    const share = place - below;
    const here = below - count * Math.floor(below / count);
    const next = here + 1 === count ? 0 : here + 1;
    into[0] = x[here]! + share * (x[next]! - x[here]!);
    into[1] = y[here]! + share * (y[next]! - y[here]!);
    into[2] = turning[here]! + share * (turning[next]! - turning[here]!);
  });
}
