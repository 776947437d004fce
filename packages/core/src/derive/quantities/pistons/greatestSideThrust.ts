import { cycleForce } from "../../cycleForce.ts";

export const greatestSideThrust = cycleForce({
  id: "greatestSideThrust",
  name: "Greatest side thrust",
  symbol: "F_sd",
  system: "pistons",
  unit: "kN",
  decimals: 2,
  meaning:
    "Greatest force with which the piston presses on the thrust side of its cylinder over a cycle, at the power speed. A shorter rod makes it greater.",
  of: ({ side }) => side,
  take: "greatest",
  expect: "10.17 kN",
});
