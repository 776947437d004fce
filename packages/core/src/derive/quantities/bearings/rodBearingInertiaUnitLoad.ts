import { unitLoad } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBearingInertiaUnitLoad = quantity({
  id: "rodBearingInertiaUnitLoad",
  name: "Rod bearing unit load by inertia",
  symbol: "p_ri",
  unit: "MPa",
  decimals: 1,
  system: "bearings",
  meaning:
    "Load of the rod bearing by inertia alone at overspeed over its loaded area: it falls on the cap’s shell.",
  inputs: { F_co: "crankpinInertiaLoad", D_p: "crankshaft.crankpinDiameter", L: "rodBearing.length" },
  formula: "F_co / (D_p * L)",
  compute: ({ F_co, D_p, L }) => unitLoad({ force: F_co, journalDiameter: D_p, shellLength: L }),
  shape: "guarded",
  valid: "peak load on the projected area",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_co: "45.8 kN", D_p: "48 mm", L: "17.6 mm" }, expect: "54.2 MPa" }],
  display: true,
});
