import { sizeOverCycle } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import {
  mainLoadCycles,
  mainLoadExamples,
  mainLoadInputs,
  mainLoadMethod,
  mainLoadRoutes,
  mainLoadTables,
  mainLoadValid,
} from "./mainLoads.ts";

interface MainBearingLoad {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly take: "mean" | "greatest";
  /** One for each way. */
  readonly expect: readonly [string, string, string];
}

/** Declares a load of the most loaded main bearing. */
export function mainBearingLoad({ take, expect, ...own }: MainBearingLoad) {
  return quantity({
    ...own,
    unit: "kN",
    decimals: 1,
    system: "bearings",
    inputs: mainLoadInputs,
    tables: mainLoadTables,
    routes: mainLoadRoutes,
    method: `${mainLoadMethod} The ${take} size over the cycle is taken, of the bearing where it is largest.`,
    compute: (numbers, _words, tables, route) =>
      Math.max(...mainLoadCycles(numbers, tables, route).map((load) => sizeOverCycle(load)[take])),
    shape: "guarded",
    valid: mainLoadValid,
    sources: [{ id: "taylor" }],
    examples: [
      { given: mainLoadExamples[0], expect: expect[0] },
      { given: mainLoadExamples[1], expect: expect[1] },
      { given: mainLoadExamples[2], expect: expect[2] },
    ],
    display: true,
  });
}
