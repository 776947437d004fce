import { frictionByLoad as frictionOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const frictionByLoad = quantity({
  id: "frictionByLoad",
  name: "Friction pressure by load",
  symbol: "p_f2",
  unit: "bar",
  decimals: 2,
  system: "targets",
  meaning:
    "The same by another published form, from peak pressure and mean piston speed. How far the two lie apart shows how well friction is known: not well.",
  inputs: { p_max: "targets.peakCylinderPressure", S_pP: "meanPistonSpeedAtPower" },
  formula: "13700 + 0.005 * p_max + 16200 * S_pP",
  compute: ({ p_max, S_pP }) => frictionOf({ peakPressure: p_max, meanPistonSpeed: S_pP }),
  shape: "monotone",
  valid: "form of Chen and Flynn with usual constants (from memory); makers fit them to each engine",
  sources: [{ id: "from-memory" }],
  examples: [{ given: { p_max: "158 bar", S_pP: "23.2 m/s" }, expect: "4.69 bar" }],
  display: true,
});
