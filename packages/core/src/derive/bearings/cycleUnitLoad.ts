import { unitLoad } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

interface CycleUnitLoad {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** Symbol, path and an example. */
  readonly load: readonly [symbol: string, path: string, example: string];
  readonly expect: string;
}

/** Declares a load of a bearing over its loaded area. */
export function cycleUnitLoad({ journal, part }: Bearing, { load, expect, ...own }: CycleUnitLoad) {
  const [F, D] = [load[0], journal[0]];
  return quantity({
    ...own,
    unit: "MPa",
    decimals: 1,
    system: "bearings",
    inputs: { [F]: load[1], [D]: journal[1], L: `${part}.length` } as Paths,
    formula: `${F} / (${D} * L)`,
    compute: (n: Numbers) => unitLoad({ force: n[F]!, journalDiameter: n[D]!, shellLength: n.L! }),
    shape: "guarded",
    valid: "load on the projected area",
    sources: [{ id: "definition" }],
    examples: [{ given: { [F]: load[2], [D]: "48 mm", L: "17.6 mm" }, expect }],
    display: true,
  });
}
