import { ringGapForFactor } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

/** Declares the end gap to which a ring is filed by the factor of its sheet. */
export function ringGapByFactor(name: "top" | "second") {
  const index = name === "top" ? 1 : 2;
  const factor = `f_g${index}`;
  return quantity({
    id: `${name}RingGapByFactor`,
    name: `${name === "top" ? "Top" : "Second"} ring end gap by its sheet`,
    symbol: `s_${index}f`,
    unit: "mm",
    decimals: 3,
    system: "rings",
    meaning: `End gap to which the ${name} ring is filed, cold in its own finished bore, when its sheet gives it as a share of the bore. Inches over inches give the same share as millimetres over millimetres.`,
    inputs: { [factor]: `ringSet.${name}RingGapFactor`, B: "block.bore" } as Readonly<Record<string, string>>,
    formula: `${factor} * B`,
    compute: (n) => ringGapForFactor({ factor: n[factor]!, bore: n.B! }),
    shape: "monotone",
    hot: { quantity: `${name}RingGapHot` },
    valid: "the factor for this use and this ring material; the ring maker’s sheet outranks any other",
    sources: [{ id: "definition" }],
    examples: [{ given: { [factor]: "0.0050", B: "86.5 mm" }, expect: "0.433 mm" }],
    display: true,
  });
}
