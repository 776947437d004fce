import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";
import { nearestToCylinder, notchInputs, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

export const rodToCylinderClearance = quantity({
  id: "rodToCylinderClearance",
  name: "Rod to cylinder bottom",
  symbol: "c_rb",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least distance between the big end of the connecting rod, cap and bolt heads included, and the lower edge of the cylinder, over a whole turn; negative when they strike. A notch that is entered is allowed for.",
  inputs: {
    ...rodSweepInputs,
    ...notchInputs,
    t_o: "connectingRod.outlineTolerance",
  },
  tables: { outline: "connectingRod.bigEndOutline" },
  method:
    "The outline of the big end is swept with the rod over one turn; the least distance in space to the round bore above its lower edge, less the notch, is taken. The uncertainty of the outline comes off it.",
  compute: ({ t_o, ...numbers }, _words, { outline }) => nearestToCylinder(numbers, outline).clearance - t_o,
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  valid:
    "stiff parts without play; a cylinder that ends in one plane; a flat-floored notch. Confirm it by turning the trial assembly by hand",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        ...rodSweepExample,
        p_n: "0 mm",
        q_n: "0 mm",
        W_n: "0 mm",
        r_n: "0 mm",
        t_o: "0 mm",
      },
      expect: "1.12 mm",
    },
    {
      given: {
        ...rodSweepExample,
        p_n: "2 mm",
        q_n: "7 mm",
        W_n: "31 mm",
        r_n: "3 mm",
        t_o: "0 mm",
      },
      expect: "2.17 mm",
    },
  ],
});
