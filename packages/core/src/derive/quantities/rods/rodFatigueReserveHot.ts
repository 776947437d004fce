import { fatigueReserve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodFatigueReserveHot = quantity({
  id: "rodFatigueReserveHot",
  name: "Fatigue reserve of the rod’s beam, hot",
  symbol: "S_Fw",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "Stress amplitude that the hot rod stands over half the swing between tension at overspeed and compression at peak pressure.",
  inputs: { sigma_ww: "rodFatigueHot", sigma_c: "rodBeamCompression", sigma_t: "rodBeamTension" },
  formula: "sigma_ww / ((sigma_c + sigma_t) / 2)",
  compute: ({ sigma_ww, sigma_c, sigma_t }) =>
    fatigueReserve({ allowableAmplitude: sigma_ww, compressiveStress: sigma_c, tensileStress: sigma_t }),
  shape: "guarded",
  valid: "as the reserve cold",
  sources: [{ id: "shigley", where: "fatigue" }],
  examples: [{ given: { sigma_ww: "366 MPa", sigma_c: "387 MPa", sigma_t: "121 MPa" }, expect: "1.44" }],
  display: true,
});
