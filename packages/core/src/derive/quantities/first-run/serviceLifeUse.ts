import { quantity } from "../../Quantity.ts";

export const serviceLifeUse = quantity({
  id: "serviceLifeUse",
  name: "Hours run over hours allowed",
  symbol: "k_t",
  unit: "1",
  decimals: 3,
  system: "first-run",
  meaning: "Share of the life of the part with the shortest life that is used up. At 1 it is due.",
  inputs: { t_u: "running.hours", t_al: "running.allowedHours" },
  formula: "t_u / t_al",
  compute: ({ t_u, t_al }) => t_u / t_al,
  shape: "monotone",
  valid: "use like that for which the part’s maker gives its hours",
  sources: [{ id: "definition" }],
  examples: [{ given: { t_u: "12 h", t_al: "15 h" }, expect: "0.800" }],
});
