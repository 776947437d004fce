import { quantity } from "../../Quantity.ts";

export const bossOverCounterweight = quantity({
  id: "bossOverCounterweight",
  name: "Pin boss over the counterweight, along",
  symbol: "w_bc",
  unit: "mm",
  decimals: 1,
  system: "clearances",
  meaning:
    "How far the pin bosses reach over the web and its counterweight along the crankshaft. Negative: they pass beside it, and the clearance below them does not count.",
  inputs: {
    s_b: "piston.bossSpacing",
    l_b: "piston.bossLength",
    L_cp: "crankshaft.crankpinLength",
    n_r: "crankshaft.rodsPerPin",
    z_0: "connectingRod.planeOffset",
  },
  formula: "s_b / 2 + l_b - (L_cp / (2 * n_r) - z_0)",
  compute: ({ s_b, l_b, L_cp, n_r, z_0 }) => s_b / 2 + l_b - (L_cp / (2 * n_r) - z_0),
  shape: "monotone",
  valid: "counterweights as wide as their web; the side on which the cylinder stands nearer to the web",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: { s_b: "24 mm", l_b: "16 mm", L_cp: "22.05 mm", n_r: "1", z_0: "0.3 mm" },
      expect: "17.3 mm",
    },
  ],
  display: true,
});
