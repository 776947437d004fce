import { quantity } from "../../Quantity.ts";

export const valveTrainMass = quantity({
  id: "valveTrainMass",
  name: "Valve train mass at the heavier valve",
  symbol: "m_eq",
  unit: "g",
  decimals: 0,
  system: "valve-train",
  meaning: "Everything that moves with one valve, brought to the valve: the larger of inlet and exhaust.",
  inputs: { m_ei: "inletValveTrainMass", m_ee: "exhaustValveTrainMass" },
  formula: "max(m_ei, m_ee)",
  compute: ({ m_ei, m_ee }) => Math.max(m_ei, m_ee),
  shape: "monotone",
  valid: "a stiff train",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_ei: "287 g", m_ee: "271 g" }, expect: "287 g" }],
});
