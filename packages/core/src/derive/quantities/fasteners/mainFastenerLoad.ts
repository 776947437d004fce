import { quantity } from "../../Quantity.ts";

export const mainFastenerLoad = quantity({
  id: "mainFastenerLoad",
  name: "Firing load on a main fastener",
  symbol: "F_m",
  unit: "kN",
  decimals: 1,
  system: "fasteners",
  meaning:
    "Pull of one cylinder’s firing on each fastener of a main cap: half the gas force falls to a bearing, in a V at half the bank angle.",
  inputs: { F_g: "gasForce", gamma: "block.bankAngle", n_c: "mainCap.boltsPerCap" },
  formula: "F_g / 2 * cos(gamma / 2) / n_c",
  compute: ({ F_g, gamma, n_c }) => ((F_g / 2) * Math.cos(gamma / 2)) / n_c,
  shape: "monotone",
  valid: "fasteners that share alike; inertia and neighbouring throws left out",
  sources: [{ id: "taylor" }],
  examples: [{ given: { F_g: "92.8494 kN", gamma: "0 deg", n_c: "2" }, expect: "23.2 kN" }],
  display: true,
});
