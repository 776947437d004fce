import { notchDepthNeeded, notchHeightNeeded } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";
import { rodSweep, rodSweepExample, rodSweepInputs } from "./rodSweep.ts";

/** What sets the two sizes of a needed notch apart. */
interface NeededNotch {
  readonly id: "notchDepthNeeded" | "notchHeightNeeded";
  readonly size: "depth" | "height";
  readonly symbol: string;
  readonly meaning: string;
  /** Expected sizes for 3 mm of clearance with a sharp corner, and with a 3 mm corner radius. */
  readonly expect: readonly [sharp: string, rounded: string];
}

/** Declares one size of the notch that gives the wanted clearance while the other size does not limit. */
export function neededNotch({ size, expect: [sharp, rounded], ...own }: NeededNotch) {
  return quantity({
    ...own,
    name: `Notch ${size} needed`,
    unit: "mm",
    decimals: 2,
    system: "clearances",
    inputs: {
      ...rodSweepInputs,
      r_n: "block.notchCornerRadius",
      t_o: "connectingRod.outlineTolerance",
      c_w: "targets.rodClearance",
    },
    tables: { outline: "connectingRod.bigEndOutline" },
    method: `The ${size} is closed in on until the swept clearance, less the uncertainty of the outline, is the wanted one.`,
    compute: ({ r_n, t_o, c_w, ...numbers }, _words, { outline }) => {
      const rod = rodSweep(numbers, outline);
      const wanted = Math.max(0, c_w + t_o);
      // Past any point that the rod can reach, so that only the open size counts.
      const beyond = numbers.r + numbers.l;
      const notch = { width: 10 * numbers.l, cornerRadius: r_n };
      return size === "depth"
        ? notchDepthNeeded({ ...rod, notch: { ...notch, height: beyond }, wanted })
        : notchHeightNeeded({ ...rod, notch: { ...notch, depth: beyond }, wanted });
    },
    shape: "guarded",
    valid:
      "flat-floored notch, cut with the corner radius entered or assumed for it; says nothing of the wall that is left",
    sources: [{ id: "plane-geometry" }],
    examples: [
      { given: { ...rodSweepExample, r_n: "0 mm", t_o: "0 mm", c_w: "3 mm" }, expect: sharp },
      { given: { ...rodSweepExample, r_n: "3 mm", t_o: "0 mm", c_w: "3 mm" }, expect: rounded },
      { given: { ...rodSweepExample, r_n: "0 mm", t_o: "0 mm", c_w: "1 mm" }, expect: "0.00 mm" },
    ],
  });
}
