import { quantity } from "../../Quantity.ts";

export const bobweightError = quantity({
  id: "bobweightError",
  name: "Bobweight error",
  symbol: "Delta_m",
  unit: "g",
  decimals: 1,
  system: "balance",
  meaning: "Bobweight with which the crankshaft was balanced less the one that these rods and pistons need.",
  inputs: { m_bd: "crankshaft.designBobweight", m_bw: "bobweightNeeded" },
  formula: "m_bd - m_bw",
  compute: ({ m_bd, m_bw }) => m_bd - m_bw,
  shape: "monotone",
  valid: "as the bobweight needed",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_bd: "1690 g", m_bw: "1682 g" }, expect: "8.0 g" }],
  display: true,
});
