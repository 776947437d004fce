import { trappedCompressionRatio as ratioOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const trappedCompressionRatio = quantity({
  id: "trappedCompressionRatio",
  name: "Trapped compression ratio",
  symbol: "epsilon_tr",
  unit: "1",
  decimals: 2,
  system: "compression",
  meaning:
    "Volume when the inlet valve has closed over clearance volume, often called dynamic compression ratio. Always smaller than the compression ratio; knock follows it more closely.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    B: "block.bore",
    V_c: "clearanceVolume",
    theta_ic: "camshaft.inletClosing",
  },
  formula:
    "(V_c + pi / 4 * B^2 * (sqrt((l + r)^2 - e^2) + r * cos(theta_ic) - sqrt(l^2 - (r * sin(theta_ic) + e)^2))) / V_c",
  compute: ({ r, l, e, B, V_c, theta_ic }) =>
    ratioOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      bore: B,
      clearanceVolume: V_c,
      inletClosing: theta_ic,
    }),
  shape: "guarded",
  valid: "inlet closing taken at 0.15 to 0.25 mm of valve lift; ram and boost are left out",
  sources: [{ id: "common-practice" }, { id: "plane-geometry" }],
  examples: [
    {
      given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", B: "86.5 mm", V_c: "69.02 cm3", theta_ic: "68 deg" },
      expect: "7.06",
    },
  ],
});
