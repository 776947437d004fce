import { shakingForce as shakingOf } from "@trialfit/mechanics";
import { greatestShakingCouple } from "../../derive/quantities/balance/greatestShakingCouple.ts";
import { greatestShakingForce } from "../../derive/quantities/balance/greatestShakingForce.ts";
import { movingMasses } from "../../derive/wholeShaking.ts";
import { cellNumber } from "../../read/cellNumber.ts";
import { asksLike, type Taken, type TraceKind } from "../TraceKind.ts";

type Numbers = Parameters<typeof movingMasses>[0];

/** Size of the shaking at an angle after the first cylinder’s top dead centre. */
function sizeOf(part: "force" | "couple", { numbers, tables }: Taken): (angle: number) => number {
  const throws = tables.throws!;
  const masses = movingMasses(numbers as Numbers, throws);
  const first = cellNumber(throws[0]!, "bank") - cellNumber(throws[0]!, "pin");
  return (angle) => {
    const found = shakingOf({ ...masses, crankAngle: angle + first, angularSpeed: numbers.n! });
    return Math.hypot(found[`${part}X`], found[`${part}Y`]);
  };
}

export const shakingForce: TraceKind = {
  ...asksLike(greatestShakingForce),
  id: "shakingForce",
  name: "Shaking force",
  meaning:
    "Force with which all that moves shakes the engine on its mounts at the highest speed, over the crank angle after the first cylinder’s top dead centre; its size, whichever way it points.",
  unit: "kN",
  decimals: 2,
  turns: 1,
  from: "firing",
  over: (taken) => sizeOf("force", taken),
  extremes: [{ take: "greatest", of: "greatestShakingForce" }],
};

export const shakingCouple: TraceKind = {
  ...asksLike(greatestShakingCouple),
  id: "shakingCouple",
  name: "Shaking couple",
  meaning:
    "Couple about the middle of the crankshaft with which all that moves shakes the engine at the highest speed, over the crank angle after the first cylinder’s top dead centre; its size, whichever way it points.",
  unit: "N m",
  decimals: 0,
  turns: 1,
  from: "firing",
  over: (taken) => sizeOf("couple", taken),
  extremes: [{ take: "greatest", of: "greatestShakingCouple" }],
};
