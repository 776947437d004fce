import { rodToCylinderBottom } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { rodSweep, rodSweepInputs } from "../../rodSweep.ts";

export const rodToCylinderUnnotched = quantity({
  id: "rodToCylinderUnnotched",
  name: "Rod to cylinder bottom without a notch",
  symbol: "c_rb0",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "The same least distance as if no notch were cut; negative when the rod strikes. It shows what a notch is worth, and whether one is needed at all.",
  inputs: {
    ...rodSweepInputs,
    t_o: "connectingRod.outlineTolerance",
  },
  outlines: { outline: "connectingRod.bigEndOutline" },
  method: "As for the clearance with a notch, with the notch left out.",
  compute: ({ t_o, ...numbers }, _words, { outline }) =>
    rodToCylinderBottom({
      ...rodSweep(numbers, outline),
    }).clearance - t_o,
  shape: "guarded",
  nominalOnly: true,
  display: true,
  valid: "stiff parts without play; a cylinder that ends in one plane",
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
        t_o: "0 mm",
        outline:
          "33 mm towards cap, 0 mm; 33 mm towards cap, 14 mm; 28.5 mm towards cap, 23.5 mm; 24 mm towards cap, 26 mm; 24 mm towards cap, 37.5 mm; 8 mm towards cap, 38.5 mm; 9 mm towards pin, 38.5 mm; 17 mm towards pin, 33.5 mm; 30 mm towards pin, 15.5 mm; 60 mm towards pin, 10.5 mm",
      },
      expect: "1.12 mm",
    },
  ],
});
