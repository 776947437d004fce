import { springSurgeAngularFrequency } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const springSurgeFrequency = quantity({
  id: "springSurgeFrequency",
  name: "Spring surge frequency",
  symbol: "f_s",
  unit: "Hz",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Lowest frequency at which waves run up and down the coils. Where a strong order of the lobe meets it, the spring loses force and breaks.",
  inputs: {
    d_w: "valveSpring.wireDiameter",
    D_w: "valveSpring.meanDiameter",
    N_a: "valveSpring.activeCoils",
    G_w: "valveSpring.shearModulus",
    rho_w: "valveSpring.density",
  },
  formula: "d_w / (2 * pi * D_w^2 * N_a) * sqrt(G_w / (2 * rho_w))",
  compute: ({ d_w, D_w, N_a, G_w, rho_w }) =>
    springSurgeAngularFrequency({
      wireDiameter: d_w,
      meanDiameter: D_w,
      activeCoils: N_a,
      shearModulus: G_w,
      density: rho_w,
    }) /
    (2 * Math.PI),
  shape: "monotone",
  valid: "round wire, even pitch, both ends held",
  sources: [{ id: "shigley", where: "helical springs, critical frequency" }],
  examples: [
    {
      given: { d_w: "5.4 mm", D_w: "31 mm", N_a: "4.6", G_w: "79 GPa", rho_w: "7850 kg/m3" },
      expect: "436 Hz",
    },
  ],
});
