import { loadFactor } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the part of a working load that the fastener feels. */
export function loadShare({ prefix, word, part, index, system }: Joint) {
  const [bolt, clamped] = [`delta_${index}`, `delta_k${index}`];
  return quantity({
    id: `${prefix}LoadFactor`,
    name: `Load factor of a ${word}`,
    symbol: `Phi_${index}`,
    unit: "1",
    decimals: 3,
    system,
    meaning: `Part of the working load that comes on top of the preload of a ${word}; the rest only takes clamp off the joint. A slender fastener on stiff parts feels least.`,
    inputs: {
      n_i: `${part}.loadIntroduction`,
      [bolt]: `${prefix}Compliance`,
      [clamped]: `${prefix}ClampedCompliance`,
    } as Paths,
    formula: `n_i * ${clamped} / (${bolt} + ${clamped})`,
    compute: (n: Numbers) =>
      loadFactor({ boltCompliance: n[bolt]!, clampedCompliance: n[clamped]!, introduction: n.n_i! }),
    shape: "guarded",
    valid: "a joint that stays shut",
    sources: [{ id: "vdi-2230" }],
    examples: [{ given: { n_i: "0.5", [bolt]: "0.0093 mm/kN", [clamped]: "0.0029 mm/kN" }, expect: "0.119" }],
    display: true,
  });
}
