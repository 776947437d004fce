import { jointReserve } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodJointReserve = quantity({
  id: "rodJointReserve",
  name: "Reserve of the big-end joint",
  symbol: "k_j",
  unit: "1",
  decimals: 2,
  system: "rods",
  meaning:
    "Preload of all bolts over the force that opens the joint. At 1 the joint is about to open and the bolts take the whole swing of the load; they fail by fatigue soon after.",
  inputs: { F_v: "rodBolt.preload", n_b: "rodBolt.count", F_j: "bigEndJointLoad" },
  formula: "n_b * F_v / F_j",
  compute: ({ F_v, n_b, F_j }) => jointReserve({ preload: F_v, bolts: n_b, jointLoad: F_j }),
  shape: "guarded",
  valid: "no prying and no settling counted",
  sources: [{ id: "kolchin-demidov" }, { id: "vdi-2230" }],
  examples: [{ given: { F_v: "46 kN", n_b: "2", F_j: "36.7433 kN" }, expect: "2.50" }],
});
