import { pistonStroke as strokeOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pistonStroke = quantity({
  id: "pistonStroke",
  name: "Piston stroke",
  symbol: "S",
  unit: "mm",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Travel of the piston between its dead centres. A little more than twice the throw radius when the pin line does not pass through the crankshaft axis.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "sqrt((l + r)^2 - e^2) - sqrt((l - r)^2 - e^2)",
  compute: ({ r, l, e }) => strokeOf({ throwRadius: r, rodLength: l, pinLineOffset: e }),
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "10 mm" }, expect: "94.253 mm" }],
});
