import { positive, requireAll } from "../check/requireAll.ts";

/** Crank angles of the valves' events, at the lift at which the durations are stated. */
export interface ValveEvents {
  /** inlet opens before overlap top dead centre [rad], - after it */
  readonly inletOpening: number;
  /** inlet closes after bottom dead centre [rad], - before it */
  readonly inletClosing: number;
  /** exhaust opens before bottom dead centre [rad], - after it */
  readonly exhaustOpening: number;
  /** exhaust closes after overlap top dead centre [rad], - before it */
  readonly exhaustClosing: number;
  /** both valves open [rad], - when the exhaust closes first */
  readonly overlap: number;
  /** angle between the lobes on the camshaft [rad of the camshaft] */
  readonly lobeSeparation: number;
}

/**
 * Valve events from the centres and durations of symmetric lobes. All angles are of the crankshaft but the
 * lobe separation, which is of the camshaft. Asymmetric lobes need the measured table.
 * @param input.inletCentre greatest inlet lift after overlap top dead centre [rad], > 0 and below a turn
 * @param input.exhaustCentre greatest exhaust lift before overlap top dead centre [rad], > 0 and below a turn
 * @param input.inletDuration at the stated lift [rad], > 0 and below the cycle
 * @param input.exhaustDuration at the same lift [rad], > 0 and below the cycle
 * @returns the events
 * @throws RangeError when a value is out of range
 *
 * Source: common practice.
 */
export function valveEvents(input: {
  inletCentre: number;
  exhaustCentre: number;
  inletDuration: number;
  exhaustDuration: number;
}): ValveEvents {
  const { inletCentre, exhaustCentre, inletDuration, exhaustDuration } = input;
  requireAll(positive, { inletCentre, exhaustCentre, inletDuration, exhaustDuration });
  requireAll({ below: 2 * Math.PI }, { inletCentre, exhaustCentre });
  requireAll({ below: 4 * Math.PI }, { inletDuration, exhaustDuration });
  const inletOpening = inletDuration / 2 - inletCentre;
  const exhaustClosing = exhaustDuration / 2 - exhaustCentre;
  return {
    inletOpening,
    inletClosing: inletCentre + inletDuration / 2 - Math.PI,
    exhaustOpening: exhaustCentre + exhaustDuration / 2 - Math.PI,
    exhaustClosing,
    overlap: inletOpening + exhaustClosing,
    lobeSeparation: (inletCentre + exhaustCentre) / 2,
  };
}
