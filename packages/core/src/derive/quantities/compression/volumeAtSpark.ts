import { cylinderVolumeAt } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const volumeAtSpark = quantity({
  id: "volumeAtSpark",
  name: "Cylinder volume at the spark",
  symbol: "V_sp",
  unit: "cm3",
  decimals: 1,
  system: "compression",
  meaning:
    "Volume of the charge when it is lit. Between the spark and top dead centre the piston still presses it into the clearance volume while the flame grows.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    B: "block.bore",
    V_c: "clearanceVolume",
    theta_sp: "combustion.sparkTiming",
  },
  formula:
    "V_c + pi / 4 * B^2 * (sqrt((l + r)^2 - e^2) - r * cos(theta_sp) - sqrt(l^2 - (r * sin(theta_sp) - e)^2))",
  compute: ({ r, l, e, B, V_c, theta_sp }) =>
    cylinderVolumeAt({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      clearanceVolume: V_c,
      angle: theta_sp,
    }),
  shape: "guarded",
  valid: "spark as set at the power target",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", B: "86.5 mm", V_c: "69.02 cm3", theta_sp: "-28 deg" },
      expect: "110.9 cm3",
    },
  ],
  display: true,
});
