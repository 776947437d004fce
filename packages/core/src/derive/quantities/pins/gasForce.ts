import { gasForce as forceOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const gasForce = quantity({
  id: "gasForce",
  name: "Gas force",
  symbol: "F_g",
  unit: "kN",
  decimals: 1,
  system: "pins",
  meaning:
    "Force of the gas on one piston at peak pressure. Inertia relief is left out: at low speed under full load there is next to none.",
  inputs: { p_max: "targets.peakCylinderPressure", B: "block.bore" },
  formula: "p_max * pi / 4 * B^2",
  compute: ({ p_max, B }) => forceOf({ cylinderPressure: p_max, casePressure: 0, bore: B }),
  shape: "monotone",
  valid: "the small pressure in the crankcase is left out",
  sources: [{ id: "heywood" }],
  examples: [{ given: { p_max: "158 bar", B: "86.5 mm" }, expect: "92.8 kN" }],
});
