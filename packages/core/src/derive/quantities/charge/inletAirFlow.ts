import { volumeFlow } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const inletAirFlow = quantity({
  id: "inletAirFlow",
  name: "Volume of air drawn in",
  symbol: "q_a",
  unit: "m3/h",
  decimals: 0,
  system: "charge",
  meaning:
    "Ambient air that goes through the filter at the target power: filters, pipes and throttles are sized by it.",
  inputs: { m_a: "airMassFlow", rho_a: "ambientAirDensity" },
  formula: "m_a / rho_a",
  compute: ({ m_a, rho_a }) => volumeFlow({ massFlow: m_a, density: rho_a }),
  shape: "monotone",
  valid: "at the density of the ambient air",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_a: "0.4195 kg/s", rho_a: "1.137 kg/m3" }, expect: "1328 m3/h" }],
  display: true,
});
