import { finite, requireAll } from "../check/requireAll.ts";
import { factorFor, INNER, requireStep } from "./bogackiShampine.ts";
import { CYCLE, isClosed, mobilityScale, PRECISION, RUN_IN, type SampledBearing } from "./filmCycle.ts";

/** Numbers of a sample: load across and along [N], mean turning [-]. */
const WIDTH = 3;

/** Places in the numbers of a path. They stand in one array, for numbers that are handed over one by one are dear. */
const FIRST = 0;
const SECOND = 2;
const THIRD = 4;
const LAST = 6;
/** Where a slope is asked for: crank angle [rad], offset over clearance. */
const ANGLE = 8;
const X = 9;
const Y = 10;
/** What is the same all along the path. */
const PER_RADIAN = 11;
const SCALE = 12;
const SQUEEZE = 13;
/** Greatest offset met, squared, and the crank angle there. */
const SQUARE = 14;
const FARTHEST = 15;
const ROOM = 16;

/** The last ones, used again for the next bearing of as many samples. */
let kept = new Float64Array();

/** Load and turning, sample after sample, the first once more at the end. */
function samplesOf({ load, meanTurning }: SampledBearing): Float64Array {
  const count = load.x.length;
  if (kept.length !== WIDTH * (count + 1)) kept = new Float64Array(WIDTH * (count + 1));
  const samples = kept;
  for (let i = 0; i <= count; i++) {
    const from = i === count ? 0 : i;
    const [x, y] = [load.x[from]!, load.y[from]!];
    const turning = typeof meanTurning === "number" ? meanTurning : meanTurning[from]!;
    if (!Number.isFinite(x + y + turning)) requireAll(finite, { load: x + y, meanTurning: turning });
    samples[WIDTH * i] = x;
    samples[WIDTH * i + 1] = y;
    samples[WIDTH * i + 2] = turning;
  }
  return samples;
}

/** Writes the slope at the crank angle and place that stand in the numbers: that of `leastFilmOverCycle`. */
function writeSlope(n: Float64Array, samples: Float64Array, into: number): void {
  const count = samples.length / WIDTH - 1;
  const x = n[X]!;
  const y = n[Y]!;
  const place = n[ANGLE]! * n[PER_RADIAN]!;
  const below = Math.floor(place);
  const share = place - below;
  const here = WIDTH * (below < 0 ? below + count : below < count ? below : below - count);
  const forceX = samples[here]! + share * (samples[here + WIDTH]! - samples[here]!);
  const forceY = samples[here + 1]! + share * (samples[here + WIDTH + 1]! - samples[here + 1]!);
  const turning = samples[here + 2]! + share * (samples[here + WIDTH + 2]! - samples[here + 2]!);
  const size = Math.sqrt(forceX * forceX + forceY * forceY);
  let slopeX = -turning * y;
  let slopeY = turning * x;
  if (size !== 0) {
    const ux = forceX / size;
    const uy = forceY / size;
    const room = 1 - Math.min(x * ux + y * uy, 1 - Number.EPSILON);
    const root = room * Math.sqrt(room);
    const along = n[SQUEEZE]! * room * root;
    const across = (-4 / Math.PI) * n[SQUEEZE]! * (y * ux - x * uy) * root;
    const speed = n[SCALE]! * size;
    slopeX += speed * (along * ux - across * uy);
    slopeY += speed * (along * uy + across * ux);
  }
  n[into] = slopeX;
  n[into + 1] = slopeY;
}

/** Follows the path from one crank angle to another [rad], by the steps of `bogackiShampine`; it ends in x and y. */
function follow(n: Float64Array, samples: Float64Array, from: number, to: number): void {
  const { tolerance, widest } = PRECISION;
  let x = n[X]!;
  let y = n[Y]!;
  let square = 0;
  let farthest = from;
  let first = FIRST;
  let last = LAST;
  let at = from;
  let step = Math.min(widest, to - from);
  n[ANGLE] = at;
  writeSlope(n, samples, first);
  while (at < to) {
    const closes = at + step >= to;
    if (closes) step = to - at;
    const x1 = n[first]!;
    const y1 = n[first + 1]!;
    n[ANGLE] = at + step / 2;
    n[X] = x + (step / 2) * x1;
    n[Y] = y + (step / 2) * y1;
    writeSlope(n, samples, SECOND);
    const x2 = n[SECOND]!;
    const y2 = n[SECOND + 1]!;
    n[ANGLE] = at + 0.75 * step;
    n[X] = x + 0.75 * step * x2;
    n[Y] = y + 0.75 * step * y2;
    writeSlope(n, samples, THIRD);
    const x3 = n[THIRD]!;
    const y3 = n[THIRD + 1]!;
    const nextX = x + (step / 9) * (2 * x1 + 3 * x2 + 4 * x3);
    const nextY = y + (step / 9) * (2 * y1 + 3 * y2 + 4 * y3);
    n[ANGLE] = at + step;
    n[X] = nextX;
    n[Y] = nextY;
    writeSlope(n, samples, last);
    const x4 = n[last]!;
    const y4 = n[last + 1]!;
    const errorX = -5 * x1 + 6 * x2 + 8 * x3 - 9 * x4;
    const errorY = -5 * y1 + 6 * y2 + 8 * y3 - 9 * y4;
    const share = ((step / 72) * Math.sqrt(errorX * errorX + errorY * errorY)) / tolerance;
    const factor = factorFor(share);
    if (share <= 1) {
      for (let inner = 0; inner <= INNER.length; inner++) {
        const t = inner < INNER.length ? INNER[inner]! : 1;
        const rise = t * t * (3 - 2 * t);
        const early = step * t * (1 - t) ** 2;
        const late = step * t * t * (1 - t);
        const alongX = x + rise * (nextX - x) + early * x1 - late * x4;
        const alongY = y + rise * (nextY - y) + early * y1 - late * y4;
        const here = alongX * alongX + alongY * alongY;
        if (here > square) {
          square = here;
          farthest = at + t * step;
        }
      }
      at = closes ? to : at + step;
      x = nextX;
      y = nextY;
      const ended = last;
      last = first;
      first = ended;
    } else requireStep(step, to - from);
    step = Math.min(widest, step * factor);
  }
  n[X] = x;
  n[Y] = y;
  n[SQUARE] = square;
  n[FARTHEST] = farthest;
}

/**
 * `leastFilmOverCycle` of a bearing whose load is sampled: the same value by the same steps, some times sooner.
 * @param bearing the bearing, samples of its load and its turning over two turns
 * @returns least film [m] and the crank angle [rad] where it lies, 0 up to 4 pi
 * @throws RangeError when a value is out of range
 *
 * Source: as `leastFilmOverCycle`.
 */
export function leastFilmOverSamples(bearing: SampledBearing): { film: number; angle: number } {
  const n = new Float64Array(ROOM);
  n[SCALE] = mobilityScale(bearing);
  // As mobilityAt.
  n[SQUEEZE] = 1 / (Math.PI * (bearing.length / bearing.journalDiameter) ** 2);
  n[PER_RADIAN] = bearing.load.x.length / CYCLE;
  const samples = samplesOf(bearing);
  follow(n, samples, -RUN_IN, 0);
  for (let [cycles, closed] = [1, false]; !closed; cycles += 1) {
    const [fromX, fromY] = [n[X]!, n[Y]!];
    follow(n, samples, 0, CYCLE);
    closed = isClosed(n[X]! - fromX, n[Y]! - fromY, cycles);
  }
  return { film: bearing.radialClearance * (1 - Math.sqrt(n[SQUARE]!)), angle: n[FARTHEST]! };
}
