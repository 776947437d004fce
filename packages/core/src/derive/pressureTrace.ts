import {
  type Cylinder,
  type PressureTrace,
  pressureTraceForPeak,
  usualBurning,
  type WorkingCycle,
} from "@trialfit/mechanics";
import { rememberNumbers } from "./rememberNumbers.ts";

/** What a working cycle needs beside its heat: input name → where it comes from. */
export const workingCycleInputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  B: "block.bore",
  V_c: "clearanceVolume",
  theta_ic: "camshaft.inletClosing",
  p_ic: "inletClosingPressure",
  T_ic: "inletClosingTemperature",
  p_m: "induction.manifoldPressure",
  p_ex: "exhaustPressure",
  theta_bs: "combustion.burnStart",
  theta_bd: "combustion.burnDuration",
  n_P: "targets.powerSpeed",
} as const;

/** What the course of the cylinder pressure needs: input name → where it comes from. */
export const pressureTraceInputs = {
  ...workingCycleInputs,
  p_max: "targets.peakCylinderPressure",
} as const;

export type PressureTraceNumbers = Readonly<Record<keyof typeof pressureTraceInputs, number>>;

/** Heat capacity ratios of fresh charge and burnt gas at the temperatures of a working cycle (from memory). */
export const FRESH_RATIO = 1.32;
const BURNT_RATIO = 1.28;
/** Mean of head, crown and cylinder on the gas side at full load [K] (from memory). */
const WALL_TEMPERATURE = 450;
/** Exhaust opening before bottom dead centre [rad]: about 50 to 80 degrees are usual (common practice). */
const EXHAUST_OPENING = Math.PI / 3;
/** One crank degree: pressures are right to about 1e-4 (tests of runClosedCycle). */
const STEP = Math.PI / 180;

/** The working cycle whose peak is sought, as mechanics takes it. */
export function workingCycle(
  numbers: Readonly<Record<keyof typeof workingCycleInputs, number>>,
): WorkingCycle & { readonly cylinder: Cylinder } {
  const { r, l, e, B, V_c, theta_ic, p_ic, T_ic, p_m, p_ex, theta_bs, theta_bd, n_P } = numbers;
  return {
    cylinder: {
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      clearanceVolume: V_c,
    },
    inletClosing: theta_ic,
    exhaustOpening: EXHAUST_OPENING,
    charge: { pressure: p_ic, temperature: T_ic },
    burning: { start: theta_bs, duration: theta_bd, ...usualBurning },
    freshRatio: FRESH_RATIO,
    burntRatio: BURNT_RATIO,
    walls: { temperature: WALL_TEMPERATURE, angularSpeed: n_P },
    step: STEP,
    inletPressure: p_m,
    exhaustPressure: p_ex,
  };
}

/**
 * Traces kept, about 11 kB each: those of all quantities of one build, so that none is worked out again when something
 * is changed that it does not rest on, a mass or the oil.
 */
const MOST_KEPT = 1024;
/**
 * Cylinder pressure over two turns whose peak is the entered peak pressure: one zone, Wiebe burning, heat to the
 * walls by Woschni; the heat is scaled until the peak fits. Read it with `pressureAt` of mechanics. About 0.25 ms;
 * the same numbers are answered from memory.
 * @throws RangeError when the numbers make no cycle, or compression alone reaches the peak pressure
 */
export const pressureTrace = rememberNumbers(
  Object.keys(pressureTraceInputs) as readonly (keyof PressureTraceNumbers)[],
  MOST_KEPT,
  (numbers: PressureTraceNumbers): PressureTrace =>
    pressureTraceForPeak(workingCycle(numbers), numbers.p_max),
);

/** How a trace comes about, for the methods of the quantities that read it. */
export const pressureTraceMethod =
  "The pressure over the 720° of a cycle comes from a single-zone model: the charge at inlet closing, compression, heat by a Wiebe function, heat to the walls by Woschni’s correlation, blow-down from 60° before bottom dead centre, then exhaust and manifold pressure. The heat is scaled until the peak is the entered peak pressure.";

/** An invented engine as text, for examples of the quantities that work a cycle. */
export const workingCycleExample = {
  r: "47 mm",
  l: "144.5 mm",
  e: "-0.5 mm",
  B: "86.5 mm",
  V_c: "69.02 cm3",
  theta_ic: "68 deg",
  p_ic: "3.48 bar",
  T_ic: "343 K",
  p_m: "2.9 bar",
  p_ex: "2.9 bar",
  theta_bs: "-16 deg",
  theta_bd: "55 deg",
  n_P: "7400 rpm",
} as const;

/** The same with its peak pressure, for examples of the quantities that read a trace. */
export const pressureTraceExample = { ...workingCycleExample, p_max: "158 bar" } as const;
