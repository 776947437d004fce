import { capPull } from "@trialfit/mechanics";
import { mainLoadValid } from "../../bearings/mainLoads.ts";
import {
  capCycleChoices,
  capCycleExamples,
  capCycleInputs,
  capCycleMethod,
  capCycleRoutes,
  capCycles,
  capCycleTables,
} from "../../mainCapCycle.ts";
import { quantity } from "../../Quantity.ts";

export const mainCapPull = quantity({
  id: "mainCapPull",
  name: "Greatest pull on a main cap over the cycle",
  symbol: "F_mc",
  unit: "kN",
  decimals: 1,
  system: "main-caps",
  meaning:
    "Greatest part of any main bearing’s real load, gas, inertia and counterweights, that pulls its cap off the block or the halves of a split crankcase apart, at the power speed.",
  inputs: capCycleInputs,
  choices: capCycleChoices,
  tables: capCycleTables,
  routes: capCycleRoutes,
  method: `${capCycleMethod} The greatest pull over the cycle and over all bearings.`,
  compute: (numbers, { split }, tables, route) =>
    Math.max(...capCycles(numbers, split, tables, route).map(capPull)),
  shape: "guarded",
  valid: mainLoadValid,
  sources: [{ id: "taylor" }],
  examples: [
    { given: capCycleExamples[0], expect: "42.2 kN" },
    { given: capCycleExamples[1], expect: "42.2 kN" },
    { given: capCycleExamples[2], expect: "30.1 kN" },
  ],
});
