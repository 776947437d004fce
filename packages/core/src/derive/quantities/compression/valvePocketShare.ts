import { quantity } from "../../Quantity.ts";

export const valvePocketShare = quantity({
  id: "valvePocketShare",
  name: "Valve pockets’ share of the clearance volume",
  symbol: "k_vp",
  unit: "%",
  decimals: 2,
  system: "compression",
  meaning:
    "Share of the clearance volume that lies in the valve pockets of the piston, where they are given apart from the crown volume. Deep pockets break up the space that the flame has to cross.",
  inputs: { V_vp: "piston.valvePocketVolume", V_c: "clearanceVolume" },
  formula: "V_vp / V_c",
  compute: ({ V_vp, V_c }) => V_vp / V_c,
  shape: "guarded",
  valid: "pockets given apart",
  sources: [{ id: "definition" }],
  examples: [{ given: { V_vp: "2.5 cm3", V_c: "69.02 cm3" }, expect: "3.62 %" }],
  display: true,
});
