import { fatigueReserve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodFatigueReserve = quantity({
  id: "rodFatigueReserve",
  name: "Fatigue reserve of the rod’s beam",
  symbol: "S_F",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "Stress amplitude that the rod stands over half the swing between tension at overspeed and compression at peak pressure.",
  inputs: {
    sigma_w: "connectingRod.fatigueStrength",
    sigma_c: "rodBeamCompression",
    sigma_t: "rodBeamTension",
  },
  formula: "sigma_w / ((sigma_c + sigma_t) / 2)",
  compute: ({ sigma_w, sigma_c, sigma_t }) =>
    fatigueReserve({ allowableAmplitude: sigma_w, compressiveStress: sigma_c, tensileStress: sigma_t }),
  shape: "guarded",
  valid:
    "the plain beam: holes, marks and the shoulder of the bolt seat lower it; the mean stress is compressive and left out",
  sources: [{ id: "shigley", where: "fatigue" }],
  examples: [{ given: { sigma_w: "380 MPa", sigma_c: "387 MPa", sigma_t: "121 MPa" }, expect: "1.50" }],
  display: true,
});
