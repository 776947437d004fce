import { cycleForce } from "../../cycleForce.ts";

export const crankpinLoadAngle = cycleForce({
  id: "crankpinLoadAngle",
  name: "Crank angle of the greatest crankpin load",
  symbol: "theta_cp",
  system: "crankshaft",
  unit: "deg",
  decimals: 0,
  meaning:
    "Crank angle from firing top dead centre at which the rod loads its crankpin most: after it when the gas rules, a turn later when inertia does.",
  of: ({ crankpin }) => crankpin.magnitude,
  take: "angle",
  expect: "21 deg",
});
