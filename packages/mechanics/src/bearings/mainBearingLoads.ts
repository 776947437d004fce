import { arraysOf } from "../check/arraysOf.ts";
import {
  finite,
  notNegative,
  positive,
  requireAll,
  requireCounts,
  requireThat,
} from "../check/requireAll.ts";
import type { LoadCycle } from "../loads/crankpinLoadCycle.ts";

/** One cylinder on the crankshaft. */
export interface CylinderPlace {
  /** direction in which it points, in the sense of rotation, from any line fixed on the block [rad] */
  readonly bank: number;
  /** along the crankshaft, from any point [m] */
  readonly position: number;
  /** crank angle of its firing top dead centre within two turns [rad] */
  readonly fires: number;
}

const CYCLE = 4 * Math.PI;

/** Sines and cosines of the crank angle at each sample, kept for the number of samples that was asked for last. */
let kept = { samples: 0, sines: new Float64Array(), cosines: new Float64Array() };

function turnedAt(samples: number) {
  if (kept.samples !== samples) {
    const of = (what: (angle: number) => number) =>
      Float64Array.from({ length: samples }, (_, i) => what((i * CYCLE) / samples));
    kept = { samples, sines: of(Math.sin), cosines: of(Math.cos) };
  }
  return kept;
}

/** Cylinders by throw: in the order of their places, so many on each crankpin. */
function throwsOf(cylinders: readonly CylinderPlace[], rodsPerPin: number): readonly CylinderPlace[][] {
  requireCounts({ rodsPerPin });
  const sorted = [...cylinders].sort((a, b) => a.position - b.position);
  requireThat(
    sorted.length > 0 && sorted.length % rodsPerPin === 0,
    "cylinders",
    sorted.length,
    `a multiple of the ${rodsPerPin} rods on a crankpin`,
  );
  return Array.from({ length: sorted.length / rodsPerPin }, (_, k) =>
    sorted.slice(k * rodsPerPin, (k + 1) * rodsPerPin),
  );
}

/** Adds the load of one rod, at its place in the cycle and turned to the block, to that of its throw. */
function addRod(rod: LoadCycle, { bank, fires }: CylinderPlace, x: Float64Array, y: Float64Array): void {
  const { x: rodX, y: rodY } = rod;
  const samples = rodX.length;
  const [sine, cosine] = [Math.sin(bank), Math.cos(bank)];
  // As cycleValue, for both parts of the load at once: the share between two samples is the same all round.
  const shift = (-fires / CYCLE) * samples;
  const whole = Math.floor(shift);
  const share = shift - whole;
  let here = whole - samples * Math.floor(whole / samples);
  let hereX = rodX[here]!;
  let hereY = rodY[here]!;
  for (let i = 0; i < samples; i++) {
    here = here + 1 === samples ? 0 : here + 1;
    const nextX = rodX[here]!;
    const nextY = rodY[here]!;
    const across = hereX + share * (nextX - hereX);
    const along = hereY + share * (nextY - hereY);
    // From the cylinder's frame to the block's: turned on by the bank in the sense of rotation.
    x[i]! += across * cosine + along * sine;
    y[i]! += along * cosine - across * sine;
    hereX = nextX;
    hereY = nextY;
  }
}

/**
 * Loads of the main bearings over a cycle: each throw lies on the two bearings beside it, half its load on each,
 * and each bearing adds up its two throws. The load of a throw is that of its rods, less the pull of the
 * crankshaft itself where its counterweights are heavier than its own crankpin and webs.
 * @param input.rod load of one rod on its crankpin, in its cylinder's frame, from its firing top dead centre
 * @param input.cylinders where each stands and when it fires; in the order of their places, so many to a throw
 * @param input.rodsPerPin rods on one crankpin, a whole number from 1
 * @param input.balanceMass mass at the crankpin that the crankshaft's own counterweights outweigh [kg], >= 0: the
 * bobweight; 0 for a crankshaft that is in balance by itself
 * @param input.throwRadius [m], > 0
 * @param input.angularSpeed [rad/s]
 * @returns one load for each main bearing from one end to the other [N], y along the line from which banks are
 * counted, x to where the crankshaft turns from it; one more than throws
 * @throws RangeError when a value is out of range
 *
 * Source: Taylor, The Internal-Combustion Engine in Theory and Practice: a statically determinate crankshaft, within
 * about 20 %.
 */
export function mainBearingLoads(input: {
  rod: LoadCycle;
  cylinders: readonly CylinderPlace[];
  rodsPerPin: number;
  balanceMass: number;
  throwRadius: number;
  angularSpeed: number;
}): readonly LoadCycle[] {
  const { rod, cylinders, rodsPerPin, balanceMass, throwRadius, angularSpeed } = input;
  requireAll(notNegative, { balanceMass });
  requireAll(positive, { throwRadius });
  requireAll(finite, { angularSpeed });
  for (const { bank, position, fires } of cylinders) requireAll(finite, { bank, position, fires });
  const throws = throwsOf(cylinders, rodsPerPin);
  const samples = rod.x.length;
  const [x, y, ...parts] = arraysOf(2 * throws.length + 4, samples) as [
    Float64Array,
    Float64Array,
    ...Float64Array[],
  ];
  const loads = Array.from({ length: throws.length + 1 }, (_, k) => ({
    x: parts[2 * k]!,
    y: parts[2 * k + 1]!,
  }));
  const pull = balanceMass * throwRadius * angularSpeed ** 2;
  const { sines, cosines } = turnedAt(samples);
  throws.forEach((sharing, k) => {
    x.fill(0);
    y.fill(0);
    for (const cylinder of sharing) addRod(rod, cylinder, x, y);
    const first = sharing[0]!;
    const [sine, cosine] = [Math.sin(first.bank - first.fires), Math.cos(first.bank - first.fires)];
    const { x: beforeX, y: beforeY } = loads[k]!;
    const { x: afterX, y: afterY } = loads[k + 1]!;
    for (let i = 0; i < samples; i++) {
      // The crankpin stands at its first angle and the crank's: sine and cosine of their sum.
      const [turned, stood] = [sines[i]!, cosines[i]!];
      const shareX = (x[i]! - pull * (sine * stood + cosine * turned)) / 2;
      const shareY = (y[i]! - pull * (cosine * stood - sine * turned)) / 2;
      beforeX[i]! += shareX;
      beforeY[i]! += shareY;
      // The bearing after it has nothing of the throws before.
      afterX[i] = shareX;
      afterY[i] = shareY;
    }
  });
  return loads;
}
