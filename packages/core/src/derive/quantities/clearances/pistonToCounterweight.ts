import { pistonToCounterweight as clearanceOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const pistonToCounterweight = quantity({
  id: "pistonToCounterweight",
  name: "Piston to counterweight",
  symbol: "c_pc",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least distance between the lowest part of the piston and the rim of the counterweights round bottom dead centre; negative when they strike.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    h_lo: "piston.lowestPointBelowPin",
    x_lo: "piston.lowestPointHalfWidth",
    R_cw: "crankshaft.counterweightRadius",
    psi_cw: "crankshaft.counterweightHalfSpan",
  },
  method:
    "The flat lower edge of the piston moves with the pin; its least distance to the rim is taken over all crank angles at which the counterweight stands below it.",
  compute: ({ r, l, e, h_lo, x_lo, R_cw, psi_cw }) =>
    clearanceOf({
      crank: { throwRadius: r, rodLength: l, pinLineOffset: e },
      lowestPointDepth: h_lo,
      lowestHalfWidth: x_lo,
      counterweightRadius: R_cw,
      counterweightHalfSpan: psi_cw,
    }).clearance,
  shape: "guarded",
  valid: "counterweights with a round rim; stiff parts without play",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "0 mm",
        h_lo: "19.5 mm",
        x_lo: "0 mm",
        R_cw: "74 mm",
        psi_cw: "65 deg",
      },
      expect: "4.00 mm",
    },
    {
      given: {
        r: "47 mm",
        l: "144.5 mm",
        e: "-0.5 mm",
        h_lo: "19.5 mm",
        x_lo: "11 mm",
        R_cw: "74 mm",
        psi_cw: "65 deg",
      },
      expect: "4.00 mm",
    },
  ],
});
