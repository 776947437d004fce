import { type CrankForces, crankForces, greatestOverCycle, meanOverCycle } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";
import { cycleForceExample, cycleForceInputs, cycleForceMethod, runningCylinder } from "./runningCylinder.ts";

interface CycleForce {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly system: "rods" | "pistons" | "crankshaft" | "bearings";
  readonly unit: "kN" | "N m" | "deg";
  readonly decimals: number;
  readonly meaning: string;
  /** Which force. */
  readonly of: (forces: CrankForces) => number;
  /** What is taken of it over the cycle. */
  readonly take: "greatest" | "angle" | "mean";
  readonly expect: string;
}

const words = {
  greatest: "The greatest value over the two turns is taken.",
  angle: "The crank angle of the greatest value, from firing top dead centre.",
  mean: "The mean over the two turns is taken.",
} as const;

/** Declares what one force of the crank drive comes to over a cycle at the power speed. */
export function cycleForce({ of, take, expect, ...own }: CycleForce) {
  return quantity({
    ...own,
    inputs: cycleForceInputs,
    method: `${cycleForceMethod} ${words[take]}`,
    compute: (numbers) => {
      const forces = crankForces(runningCylinder(numbers));
      const value = (angle: number) => of(forces(angle));
      if (take === "mean") return meanOverCycle(value);
      return greatestOverCycle(value)[take === "angle" ? "angle" : "value"];
    },
    shape: "guarded",
    valid: "one cylinder alone, no friction, an even speed; a stiff rod as two masses; no knock",
    sources: [{ id: "taylor" }, { id: "heywood", where: "ch. 9, for the gas" }],
    examples: [{ given: cycleForceExample, expect }],
    display: true,
    ...(take === "angle" ? { nominalOnly: true as const } : {}),
  });
}
