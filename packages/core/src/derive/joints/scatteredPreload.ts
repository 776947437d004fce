import { preloadRange } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** The loosest or the tightest of many: words, letter of the symbol, formula. */
const ends = {
  least: { word: "Least", adjective: "loosest", letter: "l", share: "2" },
  greatest: { word: "Greatest", adjective: "tightest", letter: "g", share: "2 * alpha_A" },
} as const;

/** Declares the preload of the loosest or the tightest of many fasteners, by the scatter of their tightening. */
function scatteredPreload(
  { prefix, word, part, index, system, preload }: Joint,
  end: keyof typeof ends,
  expect: string,
) {
  const [F, path] = preload;
  const own = ends[end];
  return quantity({
    id: `${prefix}${own.word}Preload`,
    name: `${own.word} preload of a ${word}`,
    symbol: `F_${own.letter}${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `Preload of the ${own.adjective} ${word} of many, by the scatter of the way in which they are tightened about the preload aimed at.`,
    inputs: { [F]: path, alpha_A: `${part}.tighteningFactor` } as Paths,
    formula: `${own.share} * ${F} / (1 + alpha_A)`,
    compute: (n: Numbers) => preloadRange({ preload: n[F]!, factor: n.alpha_A! })[end],
    shape: "monotone",
    valid:
      "scatter even about the mean; where the tolerances of torque and friction already span it, the band counts it twice: read the nominal value",
    sources: [{ id: "vdi-2230" }],
    examples: [{ given: { [F]: "66 kN", alpha_A: "1.6" }, expect }],
    display: true,
  });
}

export const leastPreload = (joint: Joint) => scatteredPreload(joint, "least", "50.8 kN");
export const greatestPreload = (joint: Joint) => scatteredPreload(joint, "greatest", "81.2 kN");
