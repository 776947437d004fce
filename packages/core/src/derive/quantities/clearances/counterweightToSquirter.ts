import { counterweightToSquirter as clearanceOf } from "@trialfit/mechanics";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const counterweightToSquirter = quantity({
  id: "counterweightToSquirter",
  name: "Counterweight to oil squirter",
  symbol: "c_cq",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Distance between the rim of the counterweights and the oil squirter, with the crankshaft lying on that side of its bearings; negative when they strike.",
  inputs: {
    x_sq: "block.squirterAcross",
    y_sq: "block.squirterHeight",
    r_sq: "block.squirterRadius",
    R_cw: "crankshaft.counterweightRadius",
    C_m: "mainBearingClearance",
  },
  formula: "sqrt(x_sq^2 + y_sq^2) - r_sq - R_cw - C_m / 2",
  compute: ({ x_sq, y_sq, r_sq, R_cw, C_m }) =>
    clearanceOf({
      across: x_sq,
      height: y_sq,
      nozzleRadius: r_sq,
      counterweightRadius: R_cw,
      mainBearingClearance: C_m,
    }),
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  valid: "a squirter in the plane of a counterweight; beside it the counterweight passes freely",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { x_sq: "50 mm", y_sq: "67 mm", r_sq: "3 mm", R_cw: "74 mm", C_m: "0.06 mm" },
      expect: "6.57 mm",
    },
  ],
  display: true,
});
