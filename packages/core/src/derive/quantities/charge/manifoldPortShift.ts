import { manifoldShift } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const manifoldPortShift = quantity({
  id: "manifoldPortShift",
  name: "Shift of the inlet ports by cuts",
  symbol: "Delta_t",
  unit: "mm",
  decimals: 3,
  system: "charge",
  meaning:
    "How far the ports of each inlet flange move along it, against the manifold’s, after deck, head or gasket changed; positive towards the crankshaft.",
  inputs: { m_h: "cylinderHead.lowered", beta_f: "cylinderHead.inletFlangeAngle" },
  formula: "m_h * sin(beta_f)",
  compute: ({ m_h, beta_f }) => manifoldShift({ lowered: m_h, flangeAngle: beta_f }).ports,
  shape: "guarded",
  valid: "a manifold that spans both banks of a V; cuts square to the cylinders, alike on both banks",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { m_h: "0.4 mm", beta_f: "60 deg" }, expect: "0.346 mm" }],
  display: true,
});
