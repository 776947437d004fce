import { quantity } from "../../Quantity.ts";

export const heatToCoolant = quantity({
  id: "heatToCoolant",
  name: "Heat to the coolant",
  symbol: "Q_w",
  unit: "kW",
  decimals: 0,
  system: "charge",
  meaning:
    "Heat that radiator, pump and fan must carry off at the target power, as guidance: 22 % of the fuel’s heat. Engines lie between about 17 and 26 % (from memory); short runs store much of it in metal and water.",
  inputs: { m_f: "fuelFlow", H_u: "fuel.heatingValue" },
  formula: "0.22 * m_f * H_u",
  compute: ({ m_f, H_u }) => 0.22 * m_f * H_u,
  shape: "monotone",
  valid: "spark-ignition engines at full power; a guide within a quarter either way",
  sources: [{ id: "heywood", where: "ch. 12" }, { id: "from-memory" }],
  examples: [{ given: { m_f: "36 g/s", H_u: "43.2 MJ/kg" }, expect: "342 kW" }],
  display: true,
});
