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
    "Pressure that oil needs to enter a turning main journal to its middle against its own centrifugal force, at overspeed. Crankshafts that are drilled straight through avoid most of it.",
  inputs: { rho_o: "oil.density", n_o: "targets.overspeed", D_m: "crankshaft.mainJournalDiameter" },
  formula: "rho_o * n_o^2 * (D_m / 2)^2 / 2",
  compute: ({ rho_o, n_o, D_m }) =>
    centrifugalHead({ density: rho_o, angularSpeed: n_o, journalRadius: D_m / 2, leastRadius: 0 }),
  shape: "monotone",
  valid: "drillings that pass the middle of the journal",
  sources: [{ id: "definition" }],
  examples: [{ given: { rho_o: "850 kg/m3", n_o: "7800 rpm", D_m: "57 mm" }, expect: "2.30 bar" }],
  display: true,
});
