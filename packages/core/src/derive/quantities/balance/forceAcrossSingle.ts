import { singleCylinderResidual } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const forceAcrossSingle = quantity({
  id: "forceAcrossSingle",
  name: "Primary force across one cylinder",
  symbol: "F_1x",
  unit: "kN",
  decimals: 2,
  system: "balance",
  meaning:
    "What the counterweights add across one cylinder’s axis in taking its primary force, at the highest speed.",
  inputs: {
    f_b: "crankshaft.balanceFactor",
    m_rec: "reciprocatingMass",
    r: "throwRadius",
    n: "targets.speed",
  },
  formula: "f_b * m_rec * r * n^2",
  compute: ({ f_b, m_rec, r, n }) =>
    singleCylinderResidual({ reciprocatingMass: m_rec, throwRadius: r, angularSpeed: n, balanceFactor: f_b })
      .across,
  shape: "monotone",
  valid: "the first order alone",
  sources: [{ id: "taylor" }],
  examples: [{ given: { f_b: "62 %", m_rec: "472 g", r: "41 mm", n: "10500 rpm" }, expect: "14.51 kN" }],
  display: true,
});
