import { rockerTipSweep as sweepOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rockerTipSweep = quantity({
  id: "rockerTipSweep",
  name: "Rocker sweep on the valve tip",
  symbol: "w_t",
  unit: "mm",
  decimals: 2,
  system: "valve-train",
  meaning:
    "How far a rocker’s contact wanders across the valve tip from shut to full lift. It is least when the arm is level at half lift; a wide sweep wears the guide.",
  inputs: { a_v: "valveDrive.rockerArm", L_i: "inletValveLift", theta_r: "valveDrive.midLiftError" },
  method:
    "The tip of the arm moves on a circle about the pivot; the widest spread of its distance from the pivot, square to the stem, while the valve goes from shut to full lift.",
  compute: ({ a_v, L_i, theta_r }) => sweepOf({ armLength: a_v, lift: L_i, midLiftAngle: theta_r }),
  shape: "guarded",
  valid: "a pivot that does not move; contact at the end of the arm",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { a_v: "40 mm", L_i: "12 mm", theta_r: "0 deg" }, expect: "0.45 mm" },
    { given: { a_v: "40 mm", L_i: "12 mm", theta_r: "8 deg" }, expect: "1.71 mm" },
  ],
});
