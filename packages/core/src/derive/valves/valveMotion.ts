import { greatestValveDeceleration, greatestValveSpeed, type RunningValve } from "@trialfit/mechanics";
import type { TableRow } from "../../read/FieldValue.ts";
import type { Asking } from "../groupsOf.ts";
import { quantity } from "../Quantity.ts";
import {
  liftCurve,
  liftExamples,
  liftInputs,
  liftRoutes,
  liftTables,
  oneDurationExamples,
  type Side,
  sides,
} from "./valveSide.ts";

/** What the motion of a valve at the highest speed rests on. */
export const valveMotionAsks = (side: Side): Asking => ({
  inputs: { ...liftInputs(side), n: "targets.speed" },
  choices: {},
  tables: liftTables(side),
  routes: liftRoutes(side),
});

/** A valve at the highest speed as mechanics takes it. */
export function runningValve(
  side: Side,
  n: Readonly<Record<string, number>>,
  tables: Readonly<Record<string, readonly TableRow[]>>,
): RunningValve {
  return { curve: liftCurve(side, n, tables), angularSpeed: n.n! };
}

const shared = (side: Side) =>
  ({
    inputs: valveMotionAsks(side).inputs,
    tables: liftTables(side),
    routes: liftRoutes(side),
    system: "valve-train",
    shape: "guarded",
    valid: "a stiff train in contact with its lobe, without lash; an even speed",
    sources: [{ id: "taylor" }],
    display: true,
  }) as const;

/** Greatest speed of a valve. */
export function valveSpeed(side: Side, expect: string, byOneDuration: string) {
  const { word, index } = sides[side];
  return quantity({
    ...shared(side),
    id: `${side}ValveSpeed`,
    name: `Greatest speed of the ${side} valve`,
    symbol: `v_v${index}`,
    unit: "m/s",
    decimals: 2,
    meaning: `${word} valve: greatest speed along its stem, opening or closing, at the highest speed intended.`,
    method:
      "Slope of the lift curve times the crankshaft’s speed; the greatest size over the cycle is taken.",
    compute: (n, _words, tables) => greatestValveSpeed(runningValve(side, n, tables)).value,
    examples: [
      { given: { ...liftExamples[side], n: "7800 rpm" }, expect },
      { given: { ...oneDurationExamples[side], n: "7800 rpm" }, expect: byOneDuration },
    ],
  });
}

/** Greatest acceleration of a valve towards its seat. */
export function valveDeceleration(side: Side, expect: string, byOneDuration: string) {
  const { word, index } = sides[side];
  return quantity({
    ...shared(side),
    id: `${side}ValveDeceleration`,
    name: `Greatest acceleration of the ${side} valve towards its seat`,
    symbol: `a_v${index}`,
    unit: "m/s2",
    decimals: 0,
    meaning: `${word} valve: greatest acceleration towards its seat, over the nose of the lobe, at the highest speed intended. Times the mass of the train it is what the spring must give.`,
    method:
      "Curvature of the lift curve times the square of the crankshaft’s speed; the greatest towards the seat over the cycle is taken.",
    compute: (n, _words, tables) => greatestValveDeceleration(runningValve(side, n, tables)).value,
    examples: [
      { given: { ...liftExamples[side], n: "7800 rpm" }, expect },
      { given: { ...oneDurationExamples[side], n: "7800 rpm" }, expect: byOneDuration },
    ],
  });
}
