import { pistonToValveAxialOver } from "@trialfit/mechanics";
import { exhaustPistonToValve } from "../../derive/quantities/valve-train/exhaustPistonToValve.ts";
import { inletPistonToValve } from "../../derive/quantities/valve-train/inletPistonToValve.ts";
import {
  liftCurve,
  liftInputs,
  liftRoutes,
  liftTables,
  type Side,
  sides,
  valveOverPiston,
} from "../../derive/valves/valveSide.ts";
import { asksLike, type TraceKind } from "../TraceKind.ts";

const millimetres = { unit: "mm", decimals: 2, turns: 2, from: "overlap" } as const;

function lift(side: Side): TraceKind {
  const { word } = sides[side];
  return {
    ...millimetres,
    inputs: liftInputs(side),
    choices: {},
    tables: liftTables(side),
    routes: liftRoutes(side),
    id: `${side}Lift`,
    name: `${word} valve lift`,
    meaning: `Lift of the ${side} valve off its seat.`,
    over: ({ numbers, tables }) => {
      const curve = liftCurve(side, numbers, tables);
      return (angle) => curve.at(angle).lift;
    },
    extremes: [{ take: "greatest", of: `${side}ValveLift` }],
  };
}

function gap(side: Side): TraceKind {
  const { word } = sides[side];
  return {
    ...millimetres,
    ...asksLike({ inlet: inletPistonToValve, exhaust: exhaustPistonToValve }[side]),
    id: `${side}ValveGap`,
    name: `${word} valve to piston`,
    meaning: `Room along the stem between the ${side} valve and the floor of its pocket; negative when they strike.`,
    over: ({ numbers, tables }) => pistonToValveAxialOver(valveOverPiston(side, numbers, tables)),
    extremes: [{ take: "least", of: `${side}PistonToValve` }],
  };
}

export const inletLift = lift("inlet");
export const exhaustLift = lift("exhaust");
export const inletValveGap = gap("inlet");
export const exhaustValveGap = gap("exhaust");
