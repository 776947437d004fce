import { pushrodBucklingLoad, pushrodReserve as reserveOf } from "@trialfit/mechanics";
import { STEEL } from "../../../tables/usualMetals.ts";
import { quantity } from "../../Quantity.ts";

export const pushrodReserve = quantity({
  id: "pushrodReserve",
  name: "Pushrod buckling reserve",
  symbol: "S_pr",
  unit: "1",
  decimals: 2,
  system: "valve-train",
  meaning:
    "Load at which the pushrod buckles over the greatest load at speed. A pushrod that bows long before it buckles acts as a spring; builders ask for several times.",
  inputs: {
    d_pr: "valveDrive.pushrodDiameter",
    t_pr: "valveDrive.pushrodWall",
    l_pr: "valveDrive.pushrodLength",
    R_pr: "valveDrive.pushrodYield",
    F_o: "openSpringForce",
    R_r: "valveDrive.rockerRatio",
    k_y: "valveDrive.forceFactor",
  },
  method:
    "Buckling load of the tube with ball ends (Euler where slender, Johnson where stocky) over open spring force × rocker ratio × dynamic factor.",
  compute: ({ d_pr, t_pr, l_pr, R_pr, F_o, R_r, k_y }) =>
    reserveOf({
      bucklingLoad: pushrodBucklingLoad({
        outerDiameter: d_pr,
        wall: t_pr,
        length: l_pr,
        elasticModulus: STEEL.elasticModulus,
        yieldStrength: R_pr,
      }).load,
      openForce: F_o,
      rockerRatio: R_r,
      dynamicFactor: k_y,
    }),
  shape: "monotone",
  valid: "a straight steel tube of one section",
  sources: [{ id: "shigley", where: "columns" }],
  examples: [
    {
      given: {
        d_pr: "9.5 mm",
        t_pr: "2.1 mm",
        l_pr: "195 mm",
        R_pr: "900 MPa",
        F_o: "2228 N",
        R_r: "1.6",
        k_y: "2",
      },
      expect: "2.71",
    },
  ],
});
