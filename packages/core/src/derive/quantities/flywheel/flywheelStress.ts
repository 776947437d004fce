import { discStress } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Poisson’s ratio of steel [-]; iron and aluminium change the stress by less than 2 %. Source: from memory. */
const POISSON = 0.3;

export const flywheelStress = quantity({
  id: "flywheelStress",
  name: "Stress in the flywheel",
  symbol: "sigma_f",
  unit: "MPa",
  decimals: 0,
  system: "flywheel",
  meaning: "Hoop stress at the hole of a plain disc at overspeed, times what bolt holes and steps raise it.",
  inputs: {
    k_f: "flywheel.stressRaise",
    rho_f: "flywheel.density",
    n_o: "targets.overspeed",
    D_f: "flywheel.outerDiameter",
    d_f: "flywheel.holeDiameter",
  },
  formula: "k_f * (3.3 / 4) * rho_f * (n_o * D_f / 2)^2 * (1 + 0.7 / 3.3 * (d_f / D_f)^2)",
  compute: ({ k_f, rho_f, n_o, D_f, d_f }) =>
    k_f *
    discStress({
      outerRadius: D_f / 2,
      holeRadius: d_f / 2,
      density: rho_f,
      poissonRatio: POISSON,
      angularSpeed: n_o,
    }),
  shape: "monotone",
  valid: "a flat disc of even thickness; cracks, heat of the clutch and stepped discs raise it further",
  sources: [{ id: "shigley", where: "rotating rings" }],
  examples: [
    {
      given: { k_f: "1", rho_f: "7850 kg/m3", n_o: "8200 rpm", D_f: "250 mm", d_f: "60 mm" },
      expect: "76 MPa",
    },
  ],
  display: true,
});
