import { cycleForce } from "../../cycleForce.ts";

export const greatestRodCompression = cycleForce({
  id: "greatestRodCompression",
  name: "Greatest rod compression",
  symbol: "F_rc",
  system: "rods",
  unit: "kN",
  decimals: 1,
  meaning:
    "Greatest force that presses the rod together over a cycle, at the power speed, gas force less what inertia takes off.",
  of: ({ rod }) => rod,
  take: "greatest",
  expect: "71.3 kN",
});
