import { cycleForce } from "../../cycleForce.ts";

export const greatestCrankpinLoad = cycleForce({
  id: "greatestCrankpinLoad",
  name: "Greatest crankpin load",
  symbol: "F_cp",
  system: "crankshaft",
  unit: "kN",
  decimals: 1,
  meaning: "Greatest load of one rod on its crankpin over a cycle, at the power speed.",
  of: ({ crankpin }) => crankpin.magnitude,
  take: "greatest",
  expect: "61.4 kN",
});
