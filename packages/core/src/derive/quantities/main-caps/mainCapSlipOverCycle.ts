import { capSlipOverCycle } from "@trialfit/mechanics";
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

const joint = { n_c: "2", F_vm: "62 kN", mu_c: "0.15" } as const;

export const mainCapSlipOverCycle = quantity({
  id: "mainCapSlipOverCycle",
  name: "Slip reserve of a main cap under its real load",
  symbol: "R_slc",
  unit: "1",
  decimals: 2,
  system: "main-caps",
  meaning:
    "Friction that holds a main cap along its joint over the part of the real bearing load that pushes it there, at the worst moment of the cycle and the worst bearing. Below 1 only register, dowels and cross bolts keep the cap from walking.",
  inputs: {
    ...capCycleInputs,
    n_c: "mainCap.boltsPerCap",
    F_vm: "mainPreload",
    mu_c: "mainCap.jointFriction",
  },
  choices: capCycleChoices,
  tables: capCycleTables,
  routes: capCycleRoutes,
  method: `${capCycleMethod} Friction of what clamp the pull leaves, over the push along the joint; the least over the cycle and over all bearings.`,
  compute: ({ n_c, F_vm, mu_c, ...numbers }, { split }, tables, route) =>
    Math.min(
      ...capCycles(numbers, split, tables, route).map((cap) =>
        capSlipOverCycle({ ...cap, bolts: n_c, preload: F_vm, friction: mu_c }),
      ),
    ),
  shape: "guarded",
  valid: mainLoadValid,
  sources: [{ id: "vdi-2230" }, { id: "taylor" }],
  examples: [
    { given: { ...capCycleExamples[0], ...joint }, expect: "2.89" },
    { given: { ...capCycleExamples[1], ...joint }, expect: "1.17" },
    { given: { ...capCycleExamples[2], ...joint }, expect: "2.07" },
  ],
  display: true,
});
