import { soderbergReserve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const crownFatigueReserve = quantity({
  id: "crownFatigueReserve",
  name: "Fatigue reserve of the crown, hot",
  symbol: "S_Fcr",
  unit: "1",
  decimals: 2,
  system: "pistons",
  meaning:
    "How many times the bending stress of the crown could rise before it cracks in time, its stress going between nothing and its greatest with every firing.",
  inputs: { sigma_wpw: "crownFatigueHot", R_pw: "crownYieldHot", sigma_cb: "crownPlateStress" },
  formula: "1 / (sigma_cb / 2 / sigma_wpw + sigma_cb / 2 / R_pw)",
  compute: ({ sigma_wpw, R_pw, sigma_cb }) =>
    soderbergReserve({
      amplitude: sigma_cb / 2,
      mean: sigma_cb / 2,
      fatigueStrength: sigma_wpw,
      yieldStrength: R_pw,
    }),
  shape: "monotone",
  valid: "as the reserve against yielding; Soderberg’s line, on the safe side",
  sources: [{ id: "shigley", where: "fluctuating stresses" }],
  examples: [{ given: { sigma_wpw: "84 MPa", R_pw: "207 MPa", sigma_cb: "99 MPa" }, expect: "1.21" }],
  display: true,
});
