import { engagementRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const mainThreadEngagementRatio = quantity({
  id: "mainThreadEngagementRatio",
  name: "Thread engagement of the main fasteners",
  symbol: "k_mm",
  unit: "1",
  decimals: 2,
  system: "fasteners",
  meaning:
    "Length of thread engaged in the block over the thread’s diameter. Soft metals need more of it than iron.",
  inputs: { m_e: "mainFastener.engagement", d: "mainFastener.threadDiameter" },
  formula: "m_e / d",
  compute: ({ m_e, d }) => engagementRatio({ engagement: m_e, majorDiameter: d }),
  shape: "monotone",
  valid: "full thread only: countersinks and run-outs do not count",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_e: "26 mm", d: "11 mm" }, expect: "2.36" }],
});
