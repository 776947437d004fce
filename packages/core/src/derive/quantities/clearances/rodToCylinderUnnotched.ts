import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";
import { nearestToCylinder, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

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
  tables: { outline: "connectingRod.bigEndOutline" },
  method: "As for the clearance with a notch, with the notch left out.",
  compute: ({ t_o, ...numbers }, _words, { outline }) =>
    nearestToCylinder({ ...numbers, p_n: 0, q_n: 0, W_n: 0, r_n: 0 }, outline).clearance - t_o,
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  nominalOnly: true,
  display: true,
  valid: "stiff parts without play; a cylinder that ends in one plane",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        ...rodSweepExample,
        t_o: "0 mm",
      },
      expect: "1.12 mm",
    },
  ],
});
