import type { PressureTrace } from "./pressureTrace.ts";

/**
 * Greatest pressure of a trace and where it lies: the top of the parabola through the greatest sample and its
 * neighbours.
 * @param trace the cycle
 * @returns pressure [Pa] and crank angle [rad], from -2 pi to 2 pi, 0 at firing top dead centre
 * @throws never: a trace has samples
 *
 * Source: own derivation.
 */
export function tracePeak({ step, pressures }: PressureTrace): { pressure: number; angle: number } {
  const count = pressures.length;
  let best = 0;
  for (let k = 1; k < count; k++) if (pressures[k]! > pressures[best]!) best = k;
  const top = pressures[best]!;
  const before = pressures[(best + count - 1) % count]!;
  const after = pressures[(best + 1) % count]!;
  const curvature = before - 2 * top + after;
  const shift = curvature < 0 ? (before - after) / (2 * curvature) : 0;
  const place = best > count / 2 ? best - count : best;
  return { pressure: top + (shift * (after - before)) / 4, angle: (place + shift) * step };
}
