import { cycleForce } from "../../cycleForce.ts";

export const greatestRodTension = cycleForce({
  id: "greatestRodTension",
  name: "Greatest rod tension at the power speed",
  symbol: "F_rt",
  system: "rods",
  unit: "kN",
  decimals: 1,
  meaning:
    "Greatest force that pulls the rod over a cycle, at the power speed: near the top dead centre at which the gas is exchanged, where no pressure holds against inertia.",
  of: ({ rod }) => -rod,
  take: "greatest",
  expect: "22.6 kN",
});
