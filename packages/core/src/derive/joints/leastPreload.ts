import { preloadRange } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the least preload that a way of tightening leaves among many fasteners. */
export function leastPreload({ prefix, word, part, index, system, preload }: Joint) {
  const [F, path] = preload;
  return quantity({
    id: `${prefix}LeastPreload`,
    name: `Least preload of a ${word}`,
    symbol: `F_l${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `Preload of the loosest ${word} of many, by the scatter of the way in which they are tightened about the preload aimed at.`,
    inputs: { [F]: path, alpha_A: `${part}.tighteningFactor` } as Paths,
    formula: `2 * ${F} / (1 + alpha_A)`,
    compute: (n: Numbers) => preloadRange({ preload: n[F]!, factor: n.alpha_A! }).least,
    shape: "monotone",
    valid: "scatter even about the mean",
    sources: [{ id: "vdi-2230" }],
    examples: [{ given: { [F]: "66 kN", alpha_A: "1.6" }, expect: "50.8 kN" }],
    display: true,
  });
}
