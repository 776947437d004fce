import { soderbergReserve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const bigEndCapFatigueReserve = quantity({
  id: "bigEndCapFatigueReserve",
  name: "Fatigue reserve of the big-end cap",
  symbol: "S_Fcap",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "How many times the stress of the cap could rise before it breaks in time, its stress going between nothing and its greatest in every cycle at overspeed.",
  inputs: { sigma_ww: "rodFatigueHot", R_rw: "rodYieldHot", sigma_cap: "bigEndCapStress" },
  formula: "1 / (sigma_cap / 2 / sigma_ww + sigma_cap / 2 / R_rw)",
  compute: ({ sigma_ww, R_rw, sigma_cap }) =>
    soderbergReserve({
      amplitude: sigma_cap / 2,
      mean: sigma_cap / 2,
      fatigueStrength: sigma_ww,
      yieldStrength: R_rw,
    }),
  shape: "guarded",
  valid: "as the stress; Soderberg’s line, on the safe side",
  sources: [{ id: "shigley", where: "fluctuating stresses" }],
  examples: [{ given: { sigma_ww: "366 MPa", R_rw: "995 MPa", sigma_cap: "359 MPa" }, expect: "1.49" }],
  display: true,
});
