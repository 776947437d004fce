import { notchDepthNeeded as leastOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepInputs } from "../../rodSweep.ts";

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
  outlines: { outline: "connectingRod.bigEndOutline" },
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
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        B: "86.5 mm",
        e_c: "0 mm",
        y_b: "71 mm",
        w: "21.8 mm",
        z_0: "0.3 mm",
        r_n: "0 mm",
        t_o: "0 mm",
        c_w: "3 mm",
        outline:
          "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
      },
      expect: "2.61 mm",
    },
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        B: "86.5 mm",
        e_c: "0 mm",
        y_b: "71 mm",
        w: "21.8 mm",
        z_0: "0.3 mm",
        r_n: "3 mm",
        t_o: "0 mm",
        c_w: "3 mm",
        outline:
          "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
      },
      expect: "3.49 mm",
    },
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        B: "86.5 mm",
        e_c: "0 mm",
        y_b: "71 mm",
        w: "21.8 mm",
        z_0: "0.3 mm",
        r_n: "0 mm",
        t_o: "0 mm",
        c_w: "1 mm",
        outline:
          "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
      },
      expect: "0.00 mm",
    },
  ],
});
