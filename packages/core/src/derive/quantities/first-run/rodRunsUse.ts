import { quantity } from "../../Quantity.ts";

export const rodRunsUse = quantity({
  id: "rodRunsUse",
  name: "Runs of the rods over runs allowed",
  symbol: "k_N",
  unit: "1",
  decimals: 3,
  system: "first-run",
  meaning: "Share of the runs for which the rods’ maker vouches that is used up. At 1 they are due.",
  inputs: { N_u: "running.rodRuns", N_al: "running.allowedRodRuns" },
  formula: "N_u / N_al",
  compute: ({ N_u, N_al }) => N_u / N_al,
  shape: "monotone",
  valid: "runs like those for which the maker gives their number",
  sources: [{ id: "definition" }],
  examples: [{ given: { N_u: "60", N_al: "100" }, expect: "0.600" }],
});
