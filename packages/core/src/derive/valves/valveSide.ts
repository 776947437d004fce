import {
  type LiftCurve,
  liftTableCurve,
  polynomialLiftCurve,
  type SliderCrank,
  standInLiftCurve,
  type ValveOverPiston,
} from "@trialfit/mechanics";
import { cellNumber } from "../../read/cellNumber.ts";
import type { TableRow } from "../../read/FieldValue.ts";
import type { Route } from "../Quantity.ts";
import { rememberNumbers } from "../rememberNumbers.ts";

/** The inlet or the exhaust valves: words, index of the symbols, and on which side of overlap they are open. */
export const sides = {
  inlet: { word: "Inlet", index: "i", part: "inletValve", after: 1 },
  exhaust: { word: "Exhaust", index: "e", part: "exhaustValve", after: -1 },
} as const;
export type Side = keyof typeof sides;

type Numbers = Readonly<Record<string, number>>;

/** Half window over which the curvature of a measured table is fitted: 8° of crank, several rows of a table. */
const CURVATURE_WINDOW = (8 / 180) * Math.PI;

/** What a lift curve is made from: the two checking lifts of the camshaft, and what belongs to one side. */
export function liftInputs(side: Side): Readonly<Record<string, string>> {
  const { index } = sides[side];
  return {
    l_1: "camshaft.checkingLift",
    l_2: "camshaft.upperCheckingLift",
    [`theta_c${index}`]: `camshaft.${side}Centre`,
    [`D_${index}`]: `camshaft.${side}Duration`,
    [`D_${index}2`]: `camshaft.${side}UpperDuration`,
    [`L_${index}`]: `${side}ValveLift`,
  };
}

export function liftTables(side: Side): Readonly<Record<string, string>> {
  return { [`${side}Table`]: `camshaft.${side}LiftTable` };
}

/** What one duration alone needs, at the lower or the upper of the checking lifts. */
function oneDuration(side: Side, at: "lower" | "upper"): readonly string[] {
  const { index } = sides[side];
  const [lift, duration] = at === "lower" ? ["l_1", `D_${index}`] : ["l_2", `D_${index}2`];
  return [lift, duration, `theta_c${index}`, `L_${index}`];
}

/**
 * A measured table first; without it the curve between two durations, and last a polynomial through one, which the
 * report names as stand-ins.
 */
export function liftRoutes(...which: readonly Side[]): readonly [Route, Route, Route, Route] {
  const all = (of: (side: Side) => readonly string[]) => [...new Set(which.flatMap(of))];
  const measure = "measure a lift table before the valve clearances are trusted";
  const one = (at: "lower" | "upper"): Route => ({
    needs: all((side) => oneDuration(side, at)),
    assumes: `a stand-in lift curve, a polynomial through one duration and the greatest lift, whose flanks a real lobe may pass by a millimetre: ${measure}`,
  });
  return [
    { needs: all((side) => Object.keys(liftTables(side))) },
    {
      needs: all((side) => Object.keys(liftInputs(side))),
      assumes: `a stand-in lift curve through two durations and the greatest lift: ${measure}`,
    },
    one("lower"),
    one("upper"),
  ];
}

/** Text of example inputs for a stand-in curve; invented. */
export const liftExamples = {
  inlet: {
    l_1: "0.25 mm",
    l_2: "1.27 mm",
    theta_ci: "110 deg",
    D_i: "276 deg",
    D_i2: "244 deg",
    L_i: "11 mm",
  },
  exhaust: {
    l_1: "0.25 mm",
    l_2: "1.27 mm",
    theta_ce: "112 deg",
    D_e: "268 deg",
    D_e2: "236 deg",
    L_e: "10 mm",
  },
} as const;

/** The same with nothing but the duration at the checking lift known: less of `liftExamples`. */
export const oneDurationExamples = {
  inlet: { l_1: "0.25 mm", theta_ci: "110 deg", D_i: "276 deg", L_i: "11 mm" },
  exhaust: { l_1: "0.25 mm", theta_ce: "112 deg", D_e: "268 deg", L_e: "10 mm" },
} as const;

const measured = new WeakMap<readonly TableRow[], LiftCurve>();

/** The curve through the rows of a measured table, made once for each table. */
function measuredCurve(rows: readonly TableRow[]): LiftCurve {
  let curve = measured.get(rows);
  if (curve === undefined) {
    curve = liftTableCurve({
      samples: rows.map((row) => ({ angle: cellNumber(row, "angle"), lift: cellNumber(row, "lift") })),
      curvatureWindow: CURVATURE_WINDOW,
    });
    measured.set(rows, curve);
  }
  return curve;
}

/** Curves kept: those of the points at which something else is moved. */
const MOST_KEPT = 16;
const names = ["greatestLift", "centre", "longer", "longerAt", "shorter", "shorterAt"] as const;

/** The curve through two durations; the same numbers are answered from memory. */
const throughTwo = rememberNumbers(names, MOST_KEPT, (n: Readonly<Record<(typeof names)[number], number>>) =>
  standInLiftCurve({
    greatestLift: n.greatestLift,
    centre: n.centre,
    longer: { duration: n.longer, lift: n.longerAt },
    shorter: { duration: n.shorter, lift: n.shorterAt },
  }),
);

/** The lift of one valve over the cycle, from top dead centre of overlap. */
export function liftCurve(
  side: Side,
  n: Numbers,
  tables: Readonly<Record<string, readonly TableRow[]>>,
): LiftCurve {
  const { index, after } = sides[side];
  const rows = tables[`${side}Table`];
  if (rows !== undefined) return measuredCurve(rows);
  const shared = { greatestLift: n[`L_${index}`]!, centre: after * n[`theta_c${index}`]! };
  const [longer, shorter] = [n[`D_${index}`], n[`D_${index}2`]];
  if (longer === undefined)
    return polynomialLiftCurve({ ...shared, duration: { duration: shorter!, lift: n.l_2! } });
  if (shorter === undefined)
    return polynomialLiftCurve({ ...shared, duration: { duration: longer, lift: n.l_1! } });
  return throughTwo({ ...shared, longer, longerAt: n.l_1!, shorter, shorterAt: n.l_2! });
}

/** What the piston under a valve needs: the crank drive, the shut valve's distance and its tilt. */
export function overPistonInputs(side: Side): Readonly<Record<string, string>> {
  const { index, part } = sides[side];
  return {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    [`c_0${index}`]: `${side}ValveShutDistance`,
    [`tau_${index}`]: `${part}.tilt`,
  };
}

export const overPistonExamples = {
  inlet: { r: "47 mm", l: "144.5 mm", e: "0 mm", c_0i: "4.8 mm", tau_i: "12 deg" },
  exhaust: { r: "47 mm", l: "144.5 mm", e: "0 mm", c_0e: "5 mm", tau_e: "13 deg" },
} as const;

/** A valve over its piston as mechanics takes it. */
export function valveOverPiston(
  side: Side,
  n: Numbers,
  tables: Readonly<Record<string, readonly TableRow[]>>,
): ValveOverPiston {
  const { index } = sides[side];
  const crank: SliderCrank = { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! };
  return {
    crank,
    curve: liftCurve(side, n, tables),
    shutValveDistance: n[`c_0${index}`]!,
    valveTilt: n[`tau_${index}`]!,
  };
}
