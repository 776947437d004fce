import { notchHeightNeeded as leastOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

export const notchHeightNeeded = quantity({
  id: "notchHeightNeeded",
  name: "Notch height needed",
  symbol: "q_nn",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least height of a notch above the lower edge of the cylinder that gives the wanted rod clearance when its depth and width do not limit; 0 when none is needed. Depth and height do not depend on each other: a notch of both sizes, wide enough for the rod, gives that clearance.",
  inputs: {
    ...rodSweepInputs,
    r_n: "block.notchCornerRadius",
    t_o: "connectingRod.outlineTolerance",
    c_w: "targets.rodClearance",
  },
  tables: { outline: "connectingRod.bigEndOutline" },
  method:
    "The height is closed in on until the swept clearance, less the uncertainty of the outline, is the wanted one.",
  compute: ({ r_n, t_o, c_w, ...numbers }, _words, { outline }) =>
    leastOf({
      ...rodSweep(numbers, outline),
      // Past any point that the rod can reach, so that only the height counts.
      notch: { depth: numbers.r + numbers.l, width: 10 * numbers.l, cornerRadius: r_n },
      wanted: Math.max(0, c_w + t_o),
    }),
  shape: "guarded",
  valid:
    "flat-floored notch, cut with the corner radius entered or assumed for it; says nothing of the wall that is left",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        ...rodSweepExample,
        r_n: "0 mm",
        t_o: "0 mm",
        c_w: "3 mm",
      },
      expect: "4.62 mm",
    },
    {
      given: {
        ...rodSweepExample,
        r_n: "3 mm",
        t_o: "0 mm",
        c_w: "3 mm",
      },
      expect: "5.50 mm",
    },
    {
      given: {
        ...rodSweepExample,
        r_n: "0 mm",
        t_o: "0 mm",
        c_w: "1 mm",
      },
      expect: "0.00 mm",
    },
  ],
});
