import { cycleForce } from "../../cycleForce.ts";

export const meanCrankpinLoad = cycleForce({
  id: "meanCrankpinLoad",
  name: "Mean crankpin load",
  symbol: "F_cm",
  system: "crankshaft",
  unit: "kN",
  decimals: 1,
  meaning:
    "Mean size of one rod’s load on its crankpin over a cycle, at the power speed: what heats the bearing.",
  of: ({ crankpin }) => crankpin.magnitude,
  take: "mean",
  expect: "24.1 kN",
});
