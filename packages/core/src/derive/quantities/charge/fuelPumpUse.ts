import { quantity } from "../../Quantity.ts";

export const fuelPumpUse = quantity({
  id: "fuelPumpUse",
  name: "Fuel flow over pump flow",
  symbol: "k_fp",
  unit: "%",
  decimals: 1,
  system: "charge",
  meaning:
    "Share of what the fuel pumps deliver that the engine takes at the target power. Near 100 % the rail pressure falls when it is needed most.",
  inputs: { m_f: "fuelFlow", m_fp: "fuel.pumpFlow" },
  formula: "m_f / m_fp",
  compute: ({ m_f, m_fp }) => m_f / m_fp,
  shape: "monotone",
  valid: "pump flow at the rail pressure and voltage of full power",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_f: "53.78 g/s", m_fp: "68 g/s" }, expect: "79.1 %" }],
  display: true,
});
