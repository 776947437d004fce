import {
  pistonAccelerationOver,
  pistonTravelOver,
  pistonVelocity,
  type SliderCrank,
} from "@trialfit/mechanics";
import { greatestPistonAcceleration } from "../../derive/quantities/kinematics/greatestPistonAcceleration.ts";
import { greatestPistonSpeed } from "../../derive/quantities/kinematics/greatestPistonSpeed.ts";
import { pistonStroke } from "../../derive/quantities/kinematics/pistonStroke.ts";
import { asksLike, type Taken, type TraceKind } from "../TraceKind.ts";

/** The crank drive by the names that every quantity gives it. */
export function crankOf({ numbers: n }: Taken): SliderCrank {
  return { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! };
}

export const pistonTravel: TraceKind = {
  ...asksLike(pistonStroke),
  id: "pistonTravel",
  name: "Piston below its top",
  meaning: "How far the piston stands below its top dead centre.",
  unit: "mm",
  decimals: 2,
  turns: 1,
  from: "firing",
  over: (taken) => pistonTravelOver(crankOf(taken)),
  extremes: [{ take: "greatest", of: "pistonStroke" }],
};

export const pistonSpeed: TraceKind = {
  ...asksLike(greatestPistonSpeed),
  id: "pistonSpeed",
  name: "Piston speed",
  meaning: "Velocity of the piston at the highest speed intended; positive away from the crankshaft.",
  unit: "m/s",
  decimals: 1,
  turns: 1,
  from: "firing",
  over: (taken) => {
    const crank = crankOf(taken);
    return (angle) => pistonVelocity(crank, angle, taken.numbers.n!);
  },
  extremes: [{ take: "size", of: "greatestPistonSpeed" }],
};

export const pistonAcceleration: TraceKind = {
  ...asksLike(greatestPistonAcceleration),
  id: "pistonAcceleration",
  name: "Piston acceleration",
  meaning:
    "Acceleration of the piston at the highest speed intended; positive away from the crankshaft, so negative at the top.",
  unit: "m/s2",
  decimals: 0,
  turns: 1,
  from: "firing",
  over: (taken) => pistonAccelerationOver(crankOf(taken), taken.numbers.n!),
  extremes: [{ take: "size", of: "greatestPistonAcceleration" }],
};
