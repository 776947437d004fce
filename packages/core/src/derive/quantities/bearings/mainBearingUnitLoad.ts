import { unitLoad } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainBearingUnitLoad = quantity({
  id: "mainBearingUnitLoad",
  name: "Main bearing unit load",
  symbol: "p_mb",
  unit: "MPa",
  decimals: 1,
  system: "bearings",
  meaning:
    "Half the gas force at peak pressure over the loaded area of a main bearing seen from above: each firing cylinder leans on the two mains beside it. The relief by inertia and counterweights is left out.",
  inputs: { F_g: "gasForce", D_m: "crankshaft.mainJournalDiameter", L: "mainBearing.length" },
  formula: "F_g / (2 * D_m * L)",
  compute: ({ F_g, D_m, L }) => unitLoad({ force: F_g / 2, journalDiameter: D_m, shellLength: L }),
  shape: "monotone",
  valid: "a main bearing on each side of the throw; two rods on a pin that do not fire together",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_g: "92.8494 kN", D_m: "57 mm", L: "19 mm" }, expect: "42.9 MPa" }],
});
