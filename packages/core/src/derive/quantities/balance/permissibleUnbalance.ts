import { residualUnbalance } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const permissibleUnbalance = quantity({
  id: "permissibleUnbalance",
  name: "Permissible residual unbalance",
  symbol: "U_per",
  unit: "g mm",
  decimals: 0,
  system: "balance",
  meaning:
    "Unbalance of the whole crankshaft that its balance grade leaves at the highest speed; half of it falls to each of two planes.",
  inputs: { G: "crankshaft.balanceGrade", m_c: "crankshaft.mass", n: "targets.speed" },
  formula: "G * m_c / n",
  compute: ({ G, m_c, n }) => residualUnbalance({ grade: G, rotorMass: m_c, angularSpeed: n }),
  shape: "monotone",
  valid: "rotors that do not bend at speed",
  sources: [{ id: "iso-21940-11" }],
  examples: [{ given: { G: "6.3 mm/s", m_c: "24 kg", n: "7600 rpm" }, expect: "190 g mm" }],
  display: true,
});
