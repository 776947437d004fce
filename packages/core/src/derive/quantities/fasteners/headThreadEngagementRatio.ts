import { engagementRatio } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const headThreadEngagementRatio = quantity({
  id: "headThreadEngagementRatio",
  name: "Thread engagement of the head fasteners",
  symbol: "k_mh",
  unit: "1",
  decimals: 2,
  system: "fasteners",
  meaning:
    "Length of thread engaged in the block over the thread’s diameter. Soft metals need more of it than iron.",
  inputs: { m_e: "headFastener.engagement", d: "headFastener.threadDiameter" },
  formula: "m_e / d",
  compute: ({ m_e, d }) => engagementRatio({ engagement: m_e, majorDiameter: d }),
  shape: "monotone",
  valid: "full thread only: countersinks and run-outs do not count",
  sources: [{ id: "definition" }],
  examples: [{ given: { m_e: "28 mm", d: "11 mm" }, expect: "2.55" }],
});
