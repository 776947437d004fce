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
    L_cp: "crankshaft.crankpinLength",
    n_r: "crankshaft.rodsPerPin",
    w: "connectingRod.bigEndWidth",
  },
  formula: "b_se / 2 - w / 2 - (L_cp - n_r * w)",
  compute: ({ b_se, L_cp, n_r, w }) => b_se / 2 - w / 2 - (L_cp - n_r * w),
  shape: "monotone",
  valid:
    "small end and big end in one plane, the rods pushed to the other side by all of their side clearance; counterweights as wide as their web",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { b_se: "22 mm", L_cp: "22.05 mm", n_r: "1", w: "21.8 mm" }, expect: "-0.2 mm" }],
  display: true,
});
