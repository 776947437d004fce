import type { RodNearest } from "@trialfit/mechanics";
import type { TableRow } from "../../read/FieldValue.ts";
import { ABOUT_THE_CRANKSHAFT } from "../coldOnly.ts";
import { quantity } from "../Quantity.ts";
import { rememberNumbers } from "../rememberNumbers.ts";
import { rodOutline } from "../rodSweep.ts";
import type { RodObstacle } from "./RodObstacle.ts";

const rodInputs: Readonly<Record<string, string>> = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
};

type Numbers = Readonly<Record<string, number>>;

/** Nearest approaches kept for an obstacle and an outline. */
const MOST_KEPT = 1024;

const remembered = new WeakMap<RodObstacle, WeakMap<readonly TableRow[], (numbers: Numbers) => RodNearest>>();

/** Where the rod comes nearest to an obstacle; the same numbers are answered from memory. */
function nearestOf(obstacle: RodObstacle, n: Numbers, outline: readonly TableRow[]): RodNearest {
  let byOutline = remembered.get(obstacle);
  if (byOutline === undefined) {
    byOutline = new WeakMap();
    remembered.set(obstacle, byOutline);
  }
  let nearest = byOutline.get(outline);
  if (nearest === undefined) {
    const names = Object.keys({ ...rodInputs, ...obstacle.inputs });
    nearest = rememberNumbers(names, MOST_KEPT, (numbers: Numbers) => {
      const crank = { throwRadius: numbers.r!, rodLength: numbers.l!, pinLineOffset: numbers.e! };
      return obstacle.nearest(numbers, { crank, outline: rodOutline(outline) });
    });
    byOutline.set(outline, nearest);
  }
  return nearest(n);
}

const common = {
  system: "clearances",
  tables: { outline: "connectingRod.bigEndOutline" },
  shape: "guarded",
  sources: [{ id: "plane-geometry" }],
  display: true,
} as const;

interface Kind {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly obstacle: RodObstacle;
  readonly expect: string;
}

/** Least distance between the swinging rod and an obstacle over a whole turn. */
export function rodClearance({ obstacle, expect, ...own }: Kind & { readonly meaning: string }) {
  return quantity({
    ...common,
    ...own,
    unit: "mm",
    decimals: 2,
    hot: ABOUT_THE_CRANKSHAFT,
    inputs: { ...rodInputs, ...obstacle.inputs, t_o: "connectingRod.outlineTolerance" },
    method: `The outline of the big end is swept with the rod over one turn; the ${obstacle.method} is taken. The uncertainty of the outline comes off it.`,
    compute: (n, _words, { outline }) => nearestOf(obstacle, n, outline).clearance - n.t_o!,
    valid: `stiff parts without play; ${obstacle.valid}. Confirm it by turning the trial assembly by hand`,
    examples: [{ given: { ...obstacle.given, t_o: "0 mm" }, expect }],
  });
}

/** Crank angle at which that distance is least. */
export function rodClearanceAngle({ obstacle, expect, ...own }: Kind) {
  return quantity({
    ...common,
    ...own,
    unit: "deg",
    decimals: 1,
    meaning: `Crank angle after top dead centre at which the rod comes closest to ${obstacle.words}: where to look when the trial assembly is turned by hand.`,
    inputs: { ...rodInputs, ...obstacle.inputs },
    method: `The crank angle at which the sweep of the rod finds its least distance to ${obstacle.words}.`,
    compute: (n, _words, { outline }) => nearestOf(obstacle, n, outline).crankAngle,
    valid: "as for the clearance itself; from 0 to 360°, of the cylinder whose rod comes nearest",
    examples: [{ given: obstacle.given, expect }],
    nominalOnly: true,
  });
}
