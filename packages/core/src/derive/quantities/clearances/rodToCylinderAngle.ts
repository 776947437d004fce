import { quantity } from "../../Quantity.ts";
import { nearestToCylinder, notchInputs, rodSweepExample, rodSweepInputs } from "../../rodSweep.ts";

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
    ...notchInputs,
  },
  tables: { outline: "connectingRod.bigEndOutline" },
  method: "The crank angle at which the sweep of the rod’s outline finds its least distance to the cylinder.",
  compute: (numbers, _words, { outline }) => nearestToCylinder(numbers, outline).crankAngle,
  shape: "guarded",
  nominalOnly: true,
  valid: "as for the clearance itself; from 0 to 360°",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        ...rodSweepExample,
        p_n: "0 mm",
        q_n: "0 mm",
        W_n: "0 mm",
        r_n: "0 mm",
      },
      expect: "304.0 deg",
    },
  ],
});
