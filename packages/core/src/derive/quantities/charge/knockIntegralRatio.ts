import { quantity } from "../../Quantity.ts";

export const knockIntegralRatio = quantity({
  id: "knockIntegralRatio",
  name: "Knock integral against the clean build",
  symbol: "q_k",
  unit: "1",
  decimals: 2,
  system: "charge",
  meaning:
    "Knock integral of this build over that of a build of the same engine that is known to run clean. Above 1 this build is nearer to knock than the known one.",
  inputs: { I_k: "knockIntegral", I_kr: "combustion.referenceKnockIntegral" },
  formula: "I_k / I_kr",
  compute: ({ I_k, I_kr }) => I_k / I_kr,
  shape: "guarded",
  valid: "both integrals from this program, the same engine, the same petrol",
  sources: [{ id: "definition" }],
  examples: [{ given: { I_k: "0.69", I_kr: "0.66" }, expect: "1.05" }],
});
