import { quantity } from "../../Quantity.ts";
import {
  smallEndGiven,
  smallEndInputs,
  smallEndMethod,
  smallEndPull,
  smallEndSources,
  smallEndValid,
} from "../../smallEnd.ts";

export const smallEndPullStress = quantity({
  id: "smallEndPullStress",
  name: "Stress of the small end by its pull",
  symbol: "sigma_sp",
  unit: "MPa",
  decimals: 0,
  system: "rods",
  meaning:
    "Greatest tensile stress in the eye of the small end when piston, pin and rings pull at overspeed, bending of the eye included.",
  inputs: smallEndInputs,
  method: `${smallEndMethod} The greatest tension at the inside or outside is taken.`,
  compute: (n) => {
    const { inner, outer } = smallEndPull(n);
    return Math.max(inner, outer);
  },
  shape: "guarded",
  valid: smallEndValid,
  sources: smallEndSources,
  examples: [{ given: smallEndGiven, expect: "265 MPa" }],
  display: true,
});
