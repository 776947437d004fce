import { quantity } from "../../Quantity.ts";

export const bobweightErrorShare = quantity({
  id: "bobweightErrorShare",
  name: "Bobweight error as a share",
  symbol: "e_m",
  unit: "%",
  decimals: 2,
  system: "balance",
  meaning:
    "How far the bobweight of the balance lies from the one that these rods and pistons need, whichever way, as a share of it.",
  inputs: { Delta_m: "bobweightError", m_bw: "bobweightNeeded" },
  formula: "abs(Delta_m) / m_bw",
  compute: ({ Delta_m, m_bw }) => Math.abs(Delta_m) / m_bw,
  shape: "guarded",
  valid: "as the bobweight needed",
  sources: [{ id: "definition" }],
  examples: [{ given: { Delta_m: "-23 g", m_bw: "1682 g" }, expect: "1.37 %" }],
});
