import { singleCylinderResidual } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const forceAlongSingle = quantity({
  id: "forceAlongSingle",
  name: "Primary force along one cylinder",
  symbol: "F_1y",
  unit: "kN",
  decimals: 2,
  system: "balance",
  meaning:
    "What the counterweights leave of one cylinder’s primary force along its axis, at the highest speed. In a single it is what the frame feels up and down.",
  inputs: {
    f_b: "crankshaft.balanceFactor",
    m_rec: "reciprocatingMass",
    r: "throwRadius",
    n: "targets.speed",
  },
  formula: "(1 - f_b) * m_rec * r * n^2",
  compute: ({ f_b, m_rec, r, n }) =>
    singleCylinderResidual({ reciprocatingMass: m_rec, throwRadius: r, angularSpeed: n, balanceFactor: f_b })
      .along,
  shape: "monotone",
  valid: "the first order alone; the second stays in any case",
  sources: [{ id: "taylor" }],
  examples: [{ given: { f_b: "62 %", m_rec: "472 g", r: "41 mm", n: "10500 rpm" }, expect: "8.89 kN" }],
  display: true,
});
