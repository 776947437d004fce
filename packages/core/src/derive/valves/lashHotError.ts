import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Lash that a valve set cold will have hot, less the lash wanted. */
export function lashHotError(side: Side) {
  const { word, index, part } = sides[side];
  const [cold, wanted] = [`s_c${index}`, `s_${index}`];
  return quantity({
    id: `${side}LashHotError`,
    name: `${word} lash hot against that wanted`,
    symbol: `Delta_s_${index}`,
    unit: "mm",
    decimals: 3,
    system: "valve-train",
    meaning: `Lash set cold on the ${side} valve plus its growth, less the lash with which the engine is to run. Positive: it will run wider than wanted; negative: tighter.`,
    inputs: {
      [cold]: `${part}.coldLash`,
      Delta_s: "lashGrowthHot",
      [wanted]: `${part}.lash`,
    } as Readonly<Record<string, string>>,
    formula: `${cold} + Delta_s - ${wanted}`,
    compute: (n) => n[cold]! + n.Delta_s! - n[wanted]!,
    shape: "monotone",
    valid: "pushrod engines with solid followers; the growth of the valve stem is left out",
    sources: [{ id: "definition" }],
    examples: [
      { given: { [cold]: "0.20 mm", Delta_s: "0.294 mm", [wanted]: "0.45 mm" }, expect: "0.044 mm" },
    ],
  });
}
