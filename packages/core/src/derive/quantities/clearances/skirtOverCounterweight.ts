import { quantity } from "../../Quantity.ts";

export const skirtOverCounterweight = quantity({
  id: "skirtOverCounterweight",
  name: "Skirt over the counterweight, along",
  symbol: "w_sc",
  unit: "mm",
  decimals: 1,
  system: "clearances",
  meaning:
    "How far the skirt reaches over the web and its counterweight along the crankshaft. Negative: it passes beside it, and the clearance below it does not count.",
  inputs: {
    b_s: "piston.skirtChord",
    L_cp: "crankshaft.crankpinLength",
    n_r: "crankshaft.rodsPerPin",
    z_0: "connectingRod.planeOffset",
  },
  formula: "b_s / 2 - (L_cp / (2 * n_r) - z_0)",
  compute: ({ b_s, L_cp, n_r, z_0 }) => b_s / 2 - (L_cp / (2 * n_r) - z_0),
  shape: "monotone",
  valid: "counterweights as wide as their web; the side on which the cylinder stands nearer to the web",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { b_s: "62 mm", L_cp: "22.05 mm", n_r: "1", z_0: "0.3 mm" }, expect: "20.3 mm" }],
  display: true,
});
