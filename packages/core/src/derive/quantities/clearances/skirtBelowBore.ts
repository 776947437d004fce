import { skirtBelowBore as belowBore } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const skirtBelowBore = quantity({
  id: "skirtBelowBore",
  name: "Skirt below the bore",
  symbol: "h_out",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "How far the skirt hangs out of the lower end of the cylinder at bottom dead centre; negative while it stays inside.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    h_s: "piston.skirtBelowPin",
    y_b: "block.cylinderBottomHeight",
  },
  formula: "y_b - (sqrt((l - r)^2 - e^2) - h_s)",
  compute: ({ r, l, e, h_s, y_b }) =>
    belowBore({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      skirtDepth: h_s,
      cylinderBottomHeight: y_b,
    }),
  shape: "guarded",
  valid: "cold, without bearing play",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", h_s: "27 mm", y_b: "71 mm" }, expect: "0.50 mm" },
  ],
});
