import { quantity } from "../../Quantity.ts";

export const pumpReserve = quantity({
  id: "pumpReserve",
  name: "Oil pump over the bearings’ demand",
  symbol: "S_pu",
  unit: "1",
  decimals: 2,
  system: "lubrication",
  meaning: "Flow of the pump over what the bearings take, hot, at the highest speed.",
  inputs: { Q_p: "pumpFlow", Q_d: "bearingOilDemand" },
  formula: "Q_p / Q_d",
  compute: ({ Q_p, Q_d }) => Q_p / Q_d,
  shape: "guarded",
  valid: "squirters, camshafts, lifters and a turbocharger left out",
  sources: [{ id: "definition" }],
  examples: [{ given: { Q_p: "74.9 L/min", Q_d: "16 L/min" }, expect: "4.68" }],
  display: true,
});
