import { embeddingLoss } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the preload that is lost as faces flatten. */
export function settlingLoss({ prefix, word, part, index, system }: Joint) {
  const [bolt, clamped] = [`delta_${index}`, `delta_k${index}`];
  return quantity({
    id: `${prefix}EmbeddingLoss`,
    name: `Settling loss of a ${word}`,
    symbol: `F_Z${index}`,
    unit: "kN",
    decimals: 2,
    system,
    meaning: `Preload that a ${word} loses as the faces of thread, head and joint flatten in the first hours. Short stiff fasteners lose most.`,
    inputs: {
      f_Z: `${part}.embedding`,
      [bolt]: `${prefix}Compliance`,
      [clamped]: `${prefix}ClampedCompliance`,
    } as Paths,
    formula: `f_Z / (${bolt} + ${clamped})`,
    compute: (n: Numbers) =>
      embeddingLoss({ boltCompliance: n[bolt]!, clampedCompliance: n[clamped]!, embedding: n.f_Z! }),
    shape: "guarded",
    valid: "metal on metal; a soft gasket creeps far more",
    sources: [{ id: "vdi-2230" }],
    examples: [
      { given: { f_Z: "8 um", [bolt]: "0.0093 mm/kN", [clamped]: "0.0029 mm/kN" }, expect: "0.66 kN" },
    ],
    display: true,
  });
}
