import { rodToCylinderBottom } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepInputs } from "../../rodSweep.ts";

export const rodToCylinderAngle = quantity({
  id: "rodToCylinderAngle",
  name: "Crank angle at the tightest spot of the rod",
  symbol: "theta_rb",
  unit: "deg",
  decimals: 1,
  system: "clearances",
  meaning:
    "Crank angle after top dead centre at which the rod comes closest to the lower edge of the cylinder: the place to look at when the trial assembly is turned by hand. Taken at the nominal values; when both sides are nearly as close, the other one is as worthy of a look.",
  inputs: {
    ...rodSweepInputs,
    p_n: "block.notchDepth",
    q_n: "block.notchHeight",
    W_n: "block.notchWidth",
    r_n: "block.notchCornerRadius",
  },
  outlines: { outline: "connectingRod.bigEndOutline" },
  method: "The crank angle at which the sweep of the rod’s outline finds its least distance to the cylinder.",
  compute: ({ p_n, q_n, W_n, r_n, ...numbers }, _words, { outline }) =>
    rodToCylinderBottom({
      ...rodSweep(numbers, outline),
      notch: { depth: p_n, height: q_n, width: W_n, cornerRadius: r_n },
    }).crankAngle,
  shape: "guarded",
  nominalOnly: true,
  valid: "as for the clearance itself; from 0 to 360°",
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
        p_n: "0 mm",
        q_n: "0 mm",
        W_n: "0 mm",
        r_n: "0 mm",
        outline:
          "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
      },
      expect: "304.0 deg",
    },
  ],
});
