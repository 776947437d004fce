import { pistonToValveAxial } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import {
  liftExamples,
  liftInputs,
  liftRoutes,
  liftTables,
  overPistonExamples,
  overPistonInputs,
  type Side,
  sides,
  valveOverPiston,
} from "./valveSide.ts";

interface Kind {
  readonly side: Side;
  readonly expect: string;
}

function common(side: Side) {
  return {
    system: "valve-train",
    inputs: { ...overPistonInputs(side), ...liftInputs(side) },
    tables: liftTables(side),
    routes: liftRoutes(side),
    shape: "guarded",
    valid:
      "stiff parts, lash as entered, a pocket whose floor is parallel to the valve’s face; flex and float at speed take more. Check it with clay or a dial gauge in the trial assembly",
    sources: [{ id: "plane-geometry" }],
  } as const;
}

/** Least room between a valve and its piston along the stem. */
export function pistonToValve({ side, expect }: Kind) {
  const { word, index } = sides[side];
  return quantity({
    ...common(side),
    id: `${side}PistonToValve`,
    name: `${word} valve to piston`,
    symbol: `c_v${index}`,
    unit: "mm",
    decimals: 2,
    hot: { quantity: `${side}PistonToValveHot` },
    meaning: `Least room along the stem between the ${side} valve and the floor of its pocket, within 60° of overlap; negative when they strike.`,
    method:
      "Room with the valve shut, plus the piston’s travel along the stem, less the valve’s lift, over 60° on either side of top dead centre; the least is taken.",
    compute: (n, _words, tables) => pistonToValveAxial(valveOverPiston(side, n, tables)).clearance,
    examples: [{ given: { ...overPistonExamples[side], ...liftExamples[side] }, expect }],
  });
}

/** Crank angle at which that room is least. */
export function pistonToValveAngle({ side, expect }: Kind) {
  const { word, index } = sides[side];
  return quantity({
    ...common(side),
    id: `${side}PistonToValveAngle`,
    name: `${word} valve nearest to piston`,
    symbol: `theta_v${index}`,
    unit: "deg",
    decimals: 1,
    meaning: `Crank angle from overlap top dead centre at which the ${side} valve comes nearest to the piston; negative before it.`,
    method: "Where the least room between valve and piston is found.",
    compute: (n, _words, tables) => pistonToValveAxial(valveOverPiston(side, n, tables)).angle,
    examples: [{ given: { ...overPistonExamples[side], ...liftExamples[side] }, expect }],
    nominalOnly: true,
  });
}
