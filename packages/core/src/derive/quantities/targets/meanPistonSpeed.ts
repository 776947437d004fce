import { meanPistonSpeed as speedOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const meanPistonSpeed = quantity({
  id: "meanPistonSpeed",
  name: "Mean piston speed",
  symbol: "S_p",
  unit: "m/s",
  decimals: 2,
  system: "targets",
  meaning:
    "Average speed of the piston at the highest speed intended: two strokes in each turn. The commonest single figure for how hard an engine is revved.",
  inputs: { S_0: "crankshaft.stroke", n: "targets.speed" },
  formula: "S_0 * n / pi",
  compute: ({ S_0, n }) => speedOf({ stroke: S_0, angularSpeed: n }),
  shape: "monotone",
  valid: "stroke as on the crankshaft's sheet: an offset pin line adds less than a thousandth",
  sources: [{ id: "heywood" }],
  examples: [
    { given: { S_0: "94.0006 mm", n: "7800 rpm" }, expect: "24.44 m/s" },
    {
      given: { S_0: "8.6 cm", n: "3000 rpm" },
      expect: "8.6 m/s",
      from: { id: "gupta", where: "Example 16.1, p. 519" },
    },
  ],
});
