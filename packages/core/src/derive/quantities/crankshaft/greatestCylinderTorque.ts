import { cycleForce } from "../../cycleForce.ts";

export const greatestCylinderTorque = cycleForce({
  id: "greatestCylinderTorque",
  name: "Greatest torque of one cylinder",
  symbol: "T_z",
  system: "crankshaft",
  unit: "N m",
  decimals: 0,
  meaning:
    "Greatest turning moment that one cylinder gives over its cycle, at the power speed. Crankshaft, key and flywheel joint feel it, not the mean.",
  of: ({ torque }) => torque,
  take: "greatest",
  expect: "1831 N m",
});
