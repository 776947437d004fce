import { cylinderVolumeRate, DEGREE } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const trappedRatioPerDegree = quantity({
  id: "trappedRatioPerDegree",
  name: "Trapped ratio for each degree of inlet closing",
  symbol: "k_ic",
  unit: "1",
  decimals: 3,
  system: "compression",
  meaning:
    "How much the trapped compression ratio changes when the inlet valve closes one crank degree later: negative, since a later closing lets charge back out. It says what another cam, or the same cam set otherwise, does to knock and to cranking pressure.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    B: "block.bore",
    V_c: "clearanceVolume",
    theta_ic: "camshaft.inletClosing",
  },
  formula:
    "pi / 180 * pi / 4 * B^2 * r * (cos(theta_ic) * (r * sin(theta_ic) + e) / sqrt(l^2 - (r * sin(theta_ic) + e)^2) - sin(theta_ic)) / V_c",
  compute: ({ r, l, e, B, V_c, theta_ic }) =>
    (DEGREE *
      cylinderVolumeRate({
        crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
        bore: B,
        angle: theta_ic - Math.PI,
      })) /
    V_c,
  shape: "guarded",
  valid: "small changes of the closing angle",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", B: "86.5 mm", V_c: "69.02 cm3", theta_ic: "68 deg" },
      expect: "-0.057",
    },
  ],
  display: true,
});
