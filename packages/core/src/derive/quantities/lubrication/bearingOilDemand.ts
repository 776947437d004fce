import { quantity } from "../../Quantity.ts";

export const bearingOilDemand = quantity({
  id: "bearingOilDemand",
  name: "Oil that the bearings take",
  symbol: "Q_d",
  unit: "L/min",
  decimals: 1,
  system: "lubrication",
  meaning:
    "Oil of all main and rod bearings together, hot, at the highest speed. Squirters, camshafts, lifters and a turbocharger come on top.",
  inputs: {
    n_main: "block.mainBearings",
    Q_m: "mainBearingOilFlow",
    z: "block.cylinders",
    Q_r: "rodBearingFlow",
  },
  formula: "n_main * Q_m + z * Q_r",
  compute: ({ n_main, Q_m, z, Q_r }) => n_main * Q_m + z * Q_r,
  shape: "guarded",
  valid: "as the flows of the bearings",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_main: "5", Q_m: "1.2 L/min", z: "4", Q_r: "2.5 L/min" }, expect: "16.0 L/min" }],
  display: true,
});
