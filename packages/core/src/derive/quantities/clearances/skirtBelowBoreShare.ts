import { quantity } from "../../Quantity.ts";

export const skirtBelowBoreShare = quantity({
  id: "skirtBelowBoreShare",
  name: "Share of the skirt below the bore",
  symbol: "k_out",
  unit: "1",
  decimals: 3,
  system: "clearances",
  meaning:
    "Part of the skirt’s length that hangs out of the cylinder at bottom dead centre; negative while it stays inside. What hangs out does not guide the piston.",
  inputs: { h_out: "skirtBelowBore", L_s: "piston.skirtLength" },
  formula: "h_out / L_s",
  compute: ({ h_out, L_s }) => h_out / L_s,
  shape: "guarded",
  valid: "cold",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_out: "0.501 mm", L_s: "34 mm" }, expect: "0.015" }],
});
