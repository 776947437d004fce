/** Sines and cosines of a turn in even steps. */
export interface TurnTable {
  /** steps to a turn */
  readonly count: number;
  readonly sines: Float64Array;
  readonly cosines: Float64Array;
}

/** By step; sweeps ask for two or three. */
const kept = new Map<number, TurnTable | undefined>();
const MOST_KEPT = 8;

/**
 * Sines and cosines of all whole steps of a turn, kept for some steps: sweeps ask for the same angles
 * thousands of times. Those of step k, of whatever sign, stand at k modulo `count`.
 * @param step [rad], > 0
 * @returns undefined where a turn is no whole number of steps, or more than 7200
 *
 * Source: definition.
 */
export function turnTable(step: number): TurnTable | undefined {
  if (kept.has(step)) return kept.get(step);
  const count = Math.round((2 * Math.PI) / step);
  const isWhole = count >= 1 && count <= 7200 && Math.abs(count * step - 2 * Math.PI) < 1e-12;
  const of = (what: (angle: number) => number) =>
    Float64Array.from({ length: count }, (_, index) => what(index * step));
  const table = isWhole ? { count, sines: of(Math.sin), cosines: of(Math.cos) } : undefined;
  if (kept.size === MOST_KEPT) kept.clear();
  kept.set(step, table);
  return table;
}
