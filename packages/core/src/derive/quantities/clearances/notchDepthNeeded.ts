import { notchDepthNeeded as leastOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

export const notchDepthNeeded = quantity({
  id: "notchDepthNeeded",
  name: "Notch depth needed",
  symbol: "p_nn",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least depth of a notch, measured straight outwards from the bore surface where the side face of the rod passes, that gives the wanted rod clearance when its height and width do not limit; 0 when none is needed.",
  inputs: {
    ...rodSweepInputs,
    r_n: "block.notchCornerRadius",
    t_o: "connectingRod.outlineTolerance",
    c_w: "targets.rodClearance",
  },
  tables: { outline: "connectingRod.bigEndOutline" },
  method:
    "The depth is closed in on until the swept clearance, less the uncertainty of the outline, is the wanted one.",
  compute: ({ r_n, t_o, c_w, ...numbers }, _words, { outline }) =>
    leastOf({
      ...rodSweep(numbers, outline),
      // Past any point that the rod can reach, so that only the depth counts.
      notch: { height: numbers.r + numbers.l, width: 10 * numbers.l, cornerRadius: r_n },
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
      expect: "2.61 mm",
    },
    {
      given: {
        ...rodSweepExample,
        r_n: "3 mm",
        t_o: "0 mm",
        c_w: "3 mm",
      },
      expect: "3.49 mm",
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
