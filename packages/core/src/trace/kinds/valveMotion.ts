import { valveAcceleration, valveVelocity } from "@trialfit/mechanics";
import { runningValve, valveMotionAsks } from "../../derive/valves/valveMotion.ts";
import { type Side, sides } from "../../derive/valves/valveSide.ts";
import type { TraceKind } from "../TraceKind.ts";

const overCycle = { turns: 2, from: "overlap" } as const;

function speed(side: Side): TraceKind {
  const { word } = sides[side];
  return {
    ...overCycle,
    ...valveMotionAsks(side),
    id: `${side}ValveVelocity`,
    name: `${word} valve speed`,
    meaning: `Velocity of the ${side} valve along its stem at the highest speed intended; positive while it opens.`,
    unit: "m/s",
    decimals: 2,
    over: ({ numbers, tables }) => {
      const valve = runningValve(side, numbers, tables);
      return (angle) => valveVelocity({ ...valve, angle });
    },
    extremes: [{ take: "size", of: `${side}ValveSpeed` }],
  };
}

function acceleration(side: Side): TraceKind {
  const { word } = sides[side];
  return {
    ...overCycle,
    ...valveMotionAsks(side),
    id: `${side}ValveAcceleration`,
    name: `${word} valve acceleration`,
    meaning: `Acceleration of the ${side} valve along its stem at the highest speed intended; positive off the seat, negative over the nose, where the spring brings it back. Near the seat a stand-in curve says nothing of it.`,
    unit: "m/s2",
    decimals: 0,
    over: ({ numbers, tables }) => {
      const valve = runningValve(side, numbers, tables);
      return (angle) => valveAcceleration({ ...valve, angle });
    },
    extremes: [{ take: "pull", of: `${side}ValveDeceleration` }],
  };
}

export const inletValveVelocity = speed("inlet");
export const exhaustValveVelocity = speed("exhaust");
export const inletValveAcceleration = acceleration("inlet");
export const exhaustValveAcceleration = acceleration("exhaust");
