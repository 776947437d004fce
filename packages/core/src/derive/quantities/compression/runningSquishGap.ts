import { quantity } from "../../Quantity.ts";

export const runningSquishGap = quantity({
  id: "runningSquishGap",
  name: "Squish gap at speed",
  symbol: "q_run",
  unit: "mm",
  decimals: 3,
  system: "compression",
  meaning:
    "What is left of the squish gap hot and at overspeed: the gap cold, changed by heat, less the stretch of the rod, the rocking of the piston, the play of the bearings and the give of the crankshaft. Near zero the piston taps the head.",
  inputs: {
    q: "squishGap",
    Delta_hd: "stackGrowth",
    delta_l: "rodStretchAtOverspeed",
    rho_p: "pistonRock",
    delta_C: "bearingTakeUp",
    delta_cd: "crankshaft.deflectionAtSpeed",
  },
  formula: "q + Delta_hd - delta_l - rho_p - delta_C - delta_cd",
  compute: ({ q, Delta_hd, delta_l, rho_p, delta_C, delta_cd }) =>
    q + Delta_hd - delta_l - rho_p - delta_C - delta_cd,
  shape: "guarded",
  valid: "everything at its worst in the same instant; growth of the gasket is left out",
  sources: [{ id: "common-practice" }],
  examples: [
    {
      given: {
        q: "1.101 mm",
        Delta_hd: "-0.147 mm",
        delta_l: "0.067 mm",
        rho_p: "0 mm",
        delta_C: "0.060 mm",
        delta_cd: "0 mm",
      },
      expect: "0.827 mm",
    },
  ],
  display: true,
});
