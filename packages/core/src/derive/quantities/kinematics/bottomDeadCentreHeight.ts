import { bottomDeadCentre } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bottomDeadCentreHeight = quantity({
  id: "bottomDeadCentreHeight",
  name: "Pin height at bottom dead centre",
  symbol: "y_B",
  unit: "mm",
  decimals: 3,
  system: "kinematics",
  meaning:
    "Height of the piston pin above the crankshaft axis with the piston at the bottom of its travel. Rod length less throw, a little less again when the pin line is offset.",
  inputs: { r: "throwRadius", l: "connectingRod.length", e: "pinLineOffset" },
  formula: "sqrt((l - r)^2 - e^2)",
  compute: ({ r, l, e }) => bottomDeadCentre({ throwRadius: r, rodLength: l, pinLineOffset: e }).height,
  shape: "guarded",
  valid: "|e| < l − r",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm" }, expect: "97.499 mm" }],
  display: true,
});
