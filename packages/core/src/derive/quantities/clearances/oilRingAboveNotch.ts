import { oilRingAboveNotch as aboveNotch } from "@trialfit/mechanics";
import { BELOW_THE_PISTON } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const oilRingAboveNotch = quantity({
  id: "oilRingAboveNotch",
  name: "Oil ring above the notch",
  symbol: "c_on",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "How far the lower edge of the oil ring’s groove stays above the top of the notch at bottom dead centre, or above the lower edge of the cylinder where there is no notch. Negative: the ring runs into the notch and breaks.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    h_c: "piston.compressionHeight",
    h_rp: "ringPackDepth",
    y_b: "block.cylinderBottomHeight",
    q_n: "block.notchHeight",
  },
  formula: "sqrt((l - r)^2 - e^2) + h_c - h_rp - (y_b + q_n)",
  compute: ({ r, l, e, h_c, h_rp, y_b, q_n }) =>
    aboveNotch({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      compressionHeight: h_c,
      ringPackDepth: h_rp,
      cylinderBottomHeight: y_b,
      notchHeight: q_n,
    }),
  shape: "guarded",
  hot: BELOW_THE_PISTON,
  valid: "cold, without bearing play",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        h_c: "28.4 mm",
        h_rp: "19.09 mm",
        y_b: "71 mm",
        q_n: "7 mm",
      },
      expect: "28.81 mm",
    },
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        h_c: "28.4 mm",
        h_rp: "19.09 mm",
        y_b: "71 mm",
        q_n: "8 mm",
      },
      expect: "27.81 mm",
    },
  ],
});
