import { topDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const topDeadCentreHeight = quantity({
  id: "topDeadCentreHeight",
  name: "Pin height at top dead centre",
  symbol: "y_T",
  unit: "mm",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Height of the piston pin above the crankshaft axis with the piston at the top of its travel. Rod length plus throw, a little less when the pin line is offset.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "sqrt((l + r)^2 - e^2)",
  compute: ({ r, l, e }) => topDeadCentre({ throwRadius: r, rodLength: l, pinLineOffset: e }).height,
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "191.499 mm" }],
});
