import { positive, requireAll, requireThat } from "../check/requireAll.ts";
import { solveIncreasing } from "../check/solveIncreasing.ts";
import type { ClosedCycle } from "./ClosedCycle.ts";
import { type PreparedCycle, prepareCycle } from "./prepareCycle.ts";
import { stepCycle } from "./stepCycle.ts";

function greatest(pressures: Float64Array, from: number, to: number): number {
  let best = pressures[from]!;
  for (let node = from + 1; node <= to; node++) best = Math.max(best, pressures[node]!);
  return best;
}

/** Pressures by node while the heat is sought, used again for the next. */
let room = new Float64Array(512);

/**
 * {@link heatForPeakPressure} of a cycle that is prepared already.
 * @param cycle the prepared cycle
 * @param peakPressure greatest absolute pressure [Pa], > 0
 * @returns heat of the fuel [J]
 * @throws RangeError when the charge alone reaches the pressure
 *
 * Source: as {@link heatForPeakPressure}.
 */
export function heatForPeak(cycle: PreparedCycle, peakPressure: number): number {
  requireAll(positive, { peakPressure });
  const { burningFrom, angles, ratios, shares } = cycle;
  const last = angles.length - 1;
  // After the burning, and after the piston has turned, the pressure only falls.
  const top = angles.findIndex((angle) => angle > 0) + 1;
  const to = Math.min(last, Math.max(cycle.burningTo, top));
  if (angles.length > room.length) room = new Float64Array(2 * angles.length);
  const pressures = room;
  pressures[0] = cycle.pressure;
  stepCycle(cycle, 0, pressures, 0, burningFrom);
  const before = greatest(pressures, 0, burningFrom);
  const peakOf = (heat: number) => {
    stepCycle(cycle, heat, pressures, burningFrom, to);
    return Math.max(before, greatest(pressures, burningFrom, to));
  };
  const motored = peakOf(0);
  requireThat(
    peakPressure > motored,
    "peakPressure",
    peakPressure,
    `above the ${motored} that the charge reaches without burning`,
  );
  // What it takes at constant volume, at top dead centre, is too little: two and a half times as much is mostly enough.
  const least = ((peakPressure - motored) * cycle.middleVolumes[top - 1]!) / ratios[to]! / shares[to]!;
  return solveIncreasing(
    (heat) => (heat === 0 ? motored : peakOf(heat)) - peakPressure,
    0,
    2.5 * least,
    least * 1e-12,
  );
}

/**
 * Heat that the fuel must give for a wanted peak pressure; {@link runClosedCycle} with it has that peak among
 * its nodes.
 * @param cycle cylinder, charge, burning, walls, step
 * @param peakPressure greatest absolute pressure wanted [Pa], above that of the motored charge
 * @returns heat [J]
 * @throws RangeError when a value is out of range, or the charge reaches the pressure without burning
 *
 * Source: inverse of runClosedCycle.
 */
export function heatForPeakPressure(cycle: ClosedCycle, peakPressure: number): number {
  return heatForPeak(prepareCycle(cycle), peakPressure);
}
