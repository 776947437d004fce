import { finite, requireAll, requireThat } from "../check/requireAll.ts";
import { solveIncreasing } from "../check/solveIncreasing.ts";
import { pistonStroke } from "../kinematics/pistonStroke.ts";
import { boreArea } from "../volumes/boreArea.ts";
import { prepareCycle } from "./prepareCycle.ts";
import { indicatedWork, type PressureTrace, traceOf, type WorkingCycle } from "./pressureTrace.ts";
import { runPrepared } from "./runClosedCycle.ts";

/**
 * Gross indicated mean effective pressure of a trace: work of the gas over compression and expansion strokes
 * over the swept volume.
 * @param trace the cycle
 * @param cycle the working cycle that it is of
 * @returns pressure [Pa]
 * @throws RangeError when the cylinder's sizes are out of range
 *
 * Source: Heywood, Internal Combustion Engine Fundamentals, ch. 2.
 */
export function grossIndicatedPressure(trace: PressureTrace, { cylinder }: WorkingCycle): number {
  const swept = boreArea(cylinder.bore) * pistonStroke(cylinder.crank);
  return indicatedWork(trace, cylinder, -Math.PI, Math.PI) / swept;
}

/** Share of the heat that surely does not become work; only a place to start the search from. */
const FIRST_GUESS = 0.4;

/**
 * Cylinder pressure over two turns that does a given work: the heat is found that gives it. See
 * {@link pressureTraceForHeat}. Where walls take more from earlier burning than it adds, more than one heat can give
 * the same work; one of them is taken.
 * @param cycle the working cycle
 * @param indicatedPressure gross indicated mean effective pressure wanted [Pa], above that of the motored charge
 * @returns the trace, whose gross indicated mean effective pressure is that
 * @throws RangeError when a value is out of range, or the pressure is no higher than without burning
 *
 * Source: inverse of runClosedCycle.
 */
export function pressureTraceForWork(cycle: WorkingCycle, indicatedPressure: number): PressureTrace {
  requireAll(finite, { indicatedPressure });
  const prepared = prepareCycle(cycle);
  const traceFor = (heat: number) => traceOf(cycle, runPrepared(prepared, heat), heat);
  const excess = (heat: number) => grossIndicatedPressure(traceFor(heat), cycle) - indicatedPressure;
  const motored = excess(0);
  requireThat(
    motored < 0,
    "indicatedPressure",
    indicatedPressure,
    `above the ${motored + indicatedPressure} that the cycle gives without burning`,
  );
  const swept = boreArea(cycle.cylinder.bore) * pistonStroke(cycle.cylinder.crank);
  const guess = (-motored * swept) / FIRST_GUESS;
  return traceFor(solveIncreasing(excess, 0, guess, 1e-9 * guess));
}
