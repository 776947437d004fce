import { windagePower as powerOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

/** Air with fine oil drops [Pa s]. Source: from memory. */
const MIST_VISCOSITY = 2e-5;

export const windagePower = quantity({
  id: "windagePower",
  name: "Windage of the throws",
  symbol: "P_wd",
  unit: "W",
  decimals: 0,
  system: "crankshaft",
  meaning:
    "Order of magnitude of the power that the throws lose in the oil mist at the highest speed. Good for comparing builds, not for a forecast.",
  inputs: {
    z: "block.cylinders",
    n_r: "crankshaft.rodsPerPin",
    R_cw: "crankshaft.counterweightRadius",
    n: "targets.speed",
    rho_m: "conditions.mistDensity",
  },
  formula: "0.146 * z / (2 * n_r) * (rho_m * n * R_cw^2 / 2e-5)^(-1 / 5) * rho_m * n^3 * R_cw^5",
  compute: ({ z, n_r, R_cw, n, rho_m }) =>
    powerOf({
      discs: z / n_r,
      radius: R_cw,
      angularSpeed: n,
      mistDensity: rho_m,
      mistViscosity: MIST_VISCOSITY,
    }),
  shape: "monotone",
  valid: "comparison only; the density of the mist is known within a factor of three",
  sources: [{ id: "schlichting" }],
  examples: [
    { given: { z: "4", n_r: "1", R_cw: "74 mm", n: "7800 rpm", rho_m: "15 kg/m3" }, expect: "262 W" },
  ],
  display: true,
});
