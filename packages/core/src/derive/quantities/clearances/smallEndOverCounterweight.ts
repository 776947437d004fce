import { quantity } from "../../Quantity.ts";

export const smallEndOverCounterweight = quantity({
  id: "smallEndOverCounterweight",
  name: "Small end over the counterweight, along",
  symbol: "w_ec",
  unit: "mm",
  decimals: 1,
  system: "clearances",
  meaning:
    "How far the small end reaches over the web and its counterweight along the crankshaft. Negative: it passes beside it, and the clearance below it does not count.",
  inputs: {
    b_se: "connectingRod.smallEndWidth",
    w: "connectingRod.bigEndWidth",
    z_b: "connectingRod.beamOffset",
  },
  formula: "(b_se - w) / 2 + z_b",
  compute: ({ b_se, w, z_b }) => (b_se - w) / 2 + z_b,
  shape: "monotone",
  valid: "a rod that touches that web with its big end; counterweights as wide as their web",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { b_se: "22 mm", w: "21.8 mm", z_b: "0 mm" }, expect: "0.1 mm" }],
  display: true,
});
