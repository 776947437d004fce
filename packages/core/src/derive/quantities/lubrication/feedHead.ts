import { centrifugalHead } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const feedHead = quantity({
  id: "feedHead",
  name: "Pressure to feed the crankpins",
  symbol: "p_z",
  unit: "bar",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Pressure that oil needs to enter a turning main journal to where its drilling comes nearest to the middle, against its own centrifugal force, at overspeed. Drillings that keep away from the middle need less.",
  inputs: {
    rho_o: "oil.density",
    n_o: "targets.overspeed",
    D_m: "crankshaft.mainJournalDiameter",
    r_0: "crankshaft.oilHoleLeastRadius",
  },
  formula: "rho_o * n_o^2 * ((D_m / 2)^2 - r_0^2) / 2",
  compute: ({ rho_o, n_o, D_m, r_0 }) =>
    centrifugalHead({ density: rho_o, angularSpeed: n_o, journalRadius: D_m / 2, leastRadius: r_0 }),
  shape: "monotone",
  valid: "crankpins fed from the main journals; losses in gallery and hole left out",
  sources: [{ id: "definition" }],
  examples: [
    { given: { rho_o: "850 kg/m3", n_o: "7800 rpm", D_m: "57 mm", r_0: "0 mm" }, expect: "2.30 bar" },
    { given: { rho_o: "850 kg/m3", n_o: "7800 rpm", D_m: "57 mm", r_0: "20 mm" }, expect: "1.17 bar" },
  ],
  display: true,
});
