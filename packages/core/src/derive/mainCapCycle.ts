import type { LoadCycle } from "@trialfit/mechanics";
import {
  mainLoadCycles,
  mainLoadExamples,
  mainLoadInputs,
  mainLoadMethod,
  mainLoadRoutes,
  mainLoadTables,
} from "./bearings/mainLoads.ts";
import { capOpenings } from "./capOpenings.ts";

/** What the load of the main caps over the cycle needs. */
export const capCycleInputs = { ...mainLoadInputs, gamma: "block.bankAngle" } as const;
export const capCycleChoices = { split: "mainCap.split" } as const;
export const capCycleTables = mainLoadTables;
/** As the loads of the main bearings; without throws the bank angle says where the cap lies. */
export const capCycleRoutes = [
  mainLoadRoutes[0],
  mainLoadRoutes[1],
  { needs: ["gamma"], assumes: mainLoadRoutes[2].assumes },
] as const;

/** One example for each way: two of opposed cylinders on a split case, one of a cylinder in a row. */
export const capCycleExamples = [
  { ...mainLoadExamples[0], split: "case" },
  { ...mainLoadExamples[1], split: "case" },
  { ...mainLoadExamples[2], gamma: "0 deg", split: "caps" },
] as const;

export const capCycleMethod = `${mainLoadMethod} The journal presses the half of the bearing about its load as a cosine, and the cap takes what falls on its half: the half away from the cylinders, or each half of a case split between opposed cylinders.`;

type Numbers = Parameters<typeof mainLoadCycles>[0] & { readonly gamma: number };

/** Every main bearing's load with every direction in which its cap or case half comes off. */
export function capCycles(
  numbers: Numbers,
  split: string,
  tables: Parameters<typeof mainLoadCycles>[1],
  route: number,
): readonly { readonly load: LoadCycle; readonly opening: number }[] {
  const openings = capOpenings(split, numbers.gamma, route === 2 ? undefined : tables.throws);
  return mainLoadCycles(numbers, tables, route).flatMap((load) =>
    openings.map((opening) => ({ load, opening })),
  );
}
