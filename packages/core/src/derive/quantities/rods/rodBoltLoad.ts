import { jointLoadPerBolt } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const rodBoltLoad = quantity({
  id: "rodBoltLoad",
  name: "Load on one rod bolt",
  symbol: "F_b",
  unit: "kN",
  decimals: 1,
  system: "rods",
  meaning:
    "Share of the joint load that falls to one bolt. Bending of the cap (prying) adds to it and is not counted here: 20 to 50 % more is usual (common practice).",
  inputs: { F_j: "bigEndJointLoad", n_b: "rodBolt.count" },
  formula: "F_j / n_b",
  compute: ({ F_j, n_b }) => jointLoadPerBolt({ jointLoad: F_j, bolts: n_b, pryingFactor: 1 }),
  shape: "guarded",
  valid: "no prying; bolts that share the load evenly",
  sources: [{ id: "definition" }],
  examples: [{ given: { F_j: "36.7433 kN", n_b: "2" }, expect: "18.4 kN" }],
});
