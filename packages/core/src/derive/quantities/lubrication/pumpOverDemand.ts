import { quantity } from "../../Quantity.ts";

export const pumpOverDemand = quantity({
  id: "pumpOverDemand",
  name: "Oil pump over the engine’s demand",
  symbol: "S_pe",
  unit: "1",
  decimals: 2,
  system: "lubrication",
  meaning:
    "Flow of the pump over what the whole engine takes, hot, at the highest speed. The whole is taken as six times the flow of the main bearings, which covers rod bearings, camshafts, valve drive and piston squirters.",
  inputs: { Q_p: "pumpFlow", n_main: "block.mainBearings", Q_m: "mainBearingOilFlow" },
  formula: "Q_p / (6 * n_main * Q_m)",
  compute: ({ Q_p, n_main, Q_m }) => Q_p / (6 * n_main * Q_m),
  shape: "guarded",
  valid: "pressure-fed plain bearings; a rough share, for comparing builds",
  sources: [{ id: "from-memory", where: "six times the flow of the mains" }],
  examples: [{ given: { Q_p: "65 L/min", n_main: "5", Q_m: "1.66 L/min" }, expect: "1.31" }],
  display: true,
});
