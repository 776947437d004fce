import { yieldUse } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares how much of a fastener’s yield strength its preload takes. */
export function yieldShare(
  { prefix, word, part, index, system, preload, stressArea }: Joint,
  given: Readonly<Record<string, string>>,
  expect: string,
) {
  const [[F], [A]] = [preload, stressArea];
  return quantity({
    id: `${prefix}Use`,
    name: `Use of the ${word}’s yield strength`,
    symbol: `nu_${index}`,
    unit: "1",
    decimals: 3,
    system,
    meaning: `Preload of a ${word} over the load at which its weakest section, thread or shank, yields. Too little leaves the joint loose; too much leaves nothing for the load on top.`,
    inputs: {
      [F]: preload[1],
      [A]: stressArea[1],
      A_sh: `${part}.shankArea`,
      R_p: `${part}.yieldStrength`,
    } as Paths,
    formula: `${F} / (min(${A}, A_sh) * R_p)`,
    compute: (n: Numbers) =>
      yieldUse({ preload: n[F]!, area: Math.min(n[A]!, n.A_sh!), yieldStrength: n.R_p! }),
    shape: "monotone",
    valid: "tension alone; the twist while tightening adds to it",
    sources: [{ id: "definition" }],
    examples: [{ given, expect }],
    display: true,
  });
}
