import { manifoldShift } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const manifoldGapChange = quantity({
  id: "manifoldGapChange",
  name: "Gap at the inlet flange by cuts",
  symbol: "Delta_n",
  unit: "mm",
  decimals: 3,
  system: "charge",
  meaning:
    "How much farther each inlet flange of a V stands from the manifold, square to the flange, after deck, head or gasket changed. Negative: the flanges press on the manifold, which no longer goes down between them.",
  inputs: { m_h: "cylinderHead.lowered", beta_f: "cylinderHead.inletFlangeAngle" },
  formula: "m_h * cos(beta_f)",
  compute: ({ m_h, beta_f }) => manifoldShift({ lowered: m_h, flangeAngle: beta_f }).gap,
  shape: "guarded",
  valid: "a manifold that spans both banks of a V; cuts square to the cylinders, alike on both banks",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { m_h: "0.4 mm", beta_f: "60 deg" }, expect: "0.200 mm" },
    { given: { m_h: "0.4 mm", beta_f: "120 deg" }, expect: "-0.200 mm" },
  ],
  display: true,
});
