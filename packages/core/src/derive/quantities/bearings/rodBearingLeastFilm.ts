import { leastFilm } from "../../bearings/leastFilm.ts";
import { quantity } from "../../Quantity.ts";
import {
  crankpinCycle,
  cycleForceExample,
  cycleForceInputs,
  cycleForceMethod,
} from "../../runningCylinder.ts";

export const rodBearingLeastFilm = quantity({
  id: "rodBearingLeastFilm",
  name: "Least film of the rod bearing",
  symbol: "h_min",
  unit: "um",
  decimals: 2,
  system: "bearings",
  meaning:
    "Least oil film of the rod bearing over a working cycle, the swinging load followed step by step. For comparing builds that are computed alike: starvation, tilt and the give of the rod are left out.",
  inputs: {
    ...cycleForceInputs,
    mu_o: "oilViscosity",
    D_p: "crankshaft.crankpinDiameter",
    L: "rodBearing.length",
    C_rh: "rodBearingClearanceHot",
  },
  method: `${cycleForceMethod} The crankpin’s path in its clearance is followed by the mobility method of a short bearing until the cycle closes; the least film is taken.`,
  compute: (numbers) => {
    const cycle = crankpinCycle(numbers);
    // The crankpin turns clockwise in this frame, the rod swings.
    const meanTurning = cycle.swing.map((swing) => (swing - 1) / 2);
    const { mu_o, n_P, D_p, L, C_rh } = numbers;
    const sizes = { viscosity: mu_o, angularSpeed: n_P, journalDiameter: D_p, length: L, clearance: C_rh };
    return leastFilm(sizes, cycle, meanTurning);
  },
  shape: "guarded",
  valid: "short bearings, smooth parallel parts, enough oil",
  sources: [{ id: "from-memory", where: "Booker’s mobility method" }, { id: "taylor" }],
  examples: [
    {
      given: { ...cycleForceExample, mu_o: "8.25 mPa s", D_p: "48 mm", L: "17.6 mm", C_rh: "0.064 mm" },
      expect: "1.38 um",
    },
  ],
  display: true,
});
