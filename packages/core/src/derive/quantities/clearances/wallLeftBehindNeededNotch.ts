import { notchRadialDepth, notchWall } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const wallLeftBehindNeededNotch = quantity({
  id: "wallLeftBehindNeededNotch",
  name: "Wall left behind the notch needed",
  symbol: "t_nn",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least cylinder wall less what the needed notch takes from it when its floor follows the bore: the most that can be left. A flat floor leaves less at its ends. Negative when the notch cannot be had without breaking through.",
  inputs: {
    t_w: "block.leastWall",
    B: "block.bore",
    w: "connectingRod.bigEndWidth",
    z_0: "connectingRod.planeOffset",
    p_nn: "notchDepthNeeded",
  },
  formula: "t_w - (sqrt((sqrt((B / 2)^2 - (z_0 + w / 2)^2) + p_nn)^2 + (z_0 + w / 2)^2) - B / 2)",
  compute: ({ t_w, B, w, z_0, p_nn }) => {
    const face = z_0 + w / 2;
    const depth = notchRadialDepth({ bore: B, sideFaceDistance: face, notchDepth: p_nn, distance: face });
    // Rounding may leave the depth of no notch at all a hair below zero.
    return notchWall({ wallThickness: t_w, notchDepth: Math.max(0, depth) });
  },
  shape: "guarded",
  valid: "a cylinder whose outside is round about the bore, its wall measured at the notch",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { t_w: "4.6 mm", B: "86.5 mm", w: "21.8 mm", z_0: "0.3 mm", p_nn: "1.5 mm" },
      expect: "3.15 mm",
    },
  ],
});
