import { cycleForce } from "../../cycleForce.ts";

export const meanCylinderTorque = cycleForce({
  id: "meanCylinderTorque",
  name: "Mean torque of one cylinder",
  symbol: "T_zm",
  system: "crankshaft",
  unit: "N m",
  decimals: 0,
  meaning:
    "Mean turning moment of one cylinder’s gas over its cycle, before friction, as the entered peak pressure gives it. Times the cylinders it should lie somewhat above the torque wanted: if it lies far off, the peak pressure was guessed wrong.",
  of: ({ torque }) => torque,
  take: "mean",
  expect: "186 N m",
});
