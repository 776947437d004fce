import { unitLoad } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingUnitLoad = quantity({
  id: "rodBearingUnitLoad",
  name: "Rod bearing unit load",
  symbol: "p_r",
  unit: "MPa",
  decimals: 1,
  system: "bearings",
  meaning:
    "Gas force at peak pressure over the loaded area of the rod bearing seen from above. The relief by inertia is left out.",
  inputs: { F_g: "gasForce", D_p: "crankshaft.crankpinDiameter", L: "rodBearing.length" },
  formula: "F_g / (D_p * L)",
  compute: ({ F_g, D_p, L }) => unitLoad({ force: F_g, journalDiameter: D_p, shellLength: L }),
  shape: "monotone",
  valid: "peak load on the projected area",
  sources: [{ id: "definition" }],
  examples: [
    { given: { F_g: "92.8494 kN", D_p: "48 mm", L: "17.6 mm" }, expect: "109.9 MPa" },
    {
      given: { F_g: "1.2 kN", D_p: "25 mm", L: "12.5 mm" },
      expect: "3.84 MPa",
      from: { id: "shigley", where: "Problem 12-1" },
    },
  ],
});
