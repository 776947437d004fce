import { quantity } from "../../Quantity.ts";

export const topLandShare = quantity({
  id: "topLandShare",
  name: "Top land’s share of the clearance volume",
  symbol: "k_tl",
  unit: "%",
  decimals: 2,
  system: "compression",
  meaning:
    "Share of the clearance volume that lies in the gap round the top land. Charge pressed into it burns late or not at all: it costs fuel and power and raises the hydrocarbons in the exhaust.",
  inputs: { V_tl: "topLandVolume", V_c: "clearanceVolume" },
  formula: "V_tl / V_c",
  compute: ({ V_tl, V_c }) => V_tl / V_c,
  shape: "guarded",
  valid: "cold; the gap shrinks as the piston warms up",
  sources: [{ id: "heywood", where: "crevices" }],
  examples: [{ given: { V_tl: "0.6159 cm3", V_c: "69.02 cm3" }, expect: "0.89 %" }],
  display: true,
});
