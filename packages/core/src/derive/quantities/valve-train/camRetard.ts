import { camRetardByMilling } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const camRetard = quantity({
  id: "camRetard",
  name: "Retard by lost centre distance",
  symbol: "theta_m",
  unit: "deg",
  decimals: 2,
  system: "valve-train",
  meaning:
    "How many degrees of the crankshaft an overhead camshaft falls behind when deck and head are machined and the chain’s or belt’s driving run gets shorter.",
  inputs: { m_c: "camshaft.centreDistanceLoss", R_sp: "camshaft.sprocketRadius" },
  formula: "m_c / R_sp",
  compute: ({ m_c, R_sp }) =>
    camRetardByMilling({ removedHeight: m_c, runAngle: 0, crankSprocketRadius: R_sp }),
  shape: "monotone",
  valid: "a single driving run along the cylinders, the tensioner on the slack side",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { m_c: "0.2 mm", R_sp: "29 mm" }, expect: "0.40 deg" }],
});
