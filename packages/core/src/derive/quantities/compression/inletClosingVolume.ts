import { trappedVolume } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inletClosingVolume = quantity({
  id: "inletClosingVolume",
  name: "Cylinder volume at inlet closing",
  symbol: "V_ic",
  unit: "cm3",
  decimals: 1,
  system: "compression",
  meaning:
    "Volume in which the charge is shut in when the inlet valve has closed: compression begins from it, not from bottom dead centre.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    B: "block.bore",
    V_c: "clearanceVolume",
    theta_ic: "camshaft.inletClosing",
  },
  formula:
    "V_c + pi / 4 * B^2 * (sqrt((l + r)^2 - e^2) + r * cos(theta_ic) - sqrt(l^2 - (r * sin(theta_ic) + e)^2))",
  compute: ({ r, l, e, B, V_c, theta_ic }) =>
    trappedVolume({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      clearanceVolume: V_c,
      inletClosing: theta_ic,
    }),
  shape: "guarded",
  valid: "inlet closing taken at 0.15 to 0.25 mm of valve lift",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", B: "86.5 mm", V_c: "69.02 cm3", theta_ic: "68 deg" },
      expect: "487.3 cm3",
    },
  ],
  display: true,
});
