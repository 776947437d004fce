import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Play of a valve stem in its guide, cold. */
export function guideClearance(side: Side) {
  const { word, index, part } = sides[side];
  const [bore, stem] = [`D_gd${index}`, `d_st${index}`];
  return quantity({
    id: `${side}GuideClearance`,
    name: `${word} stem in guide`,
    symbol: `C_g${index}`,
    unit: "mm",
    decimals: 3,
    system: "valve-train",
    meaning: `Bore of the guide less the stem of the ${side} valve, across the diameter, cold.`,
    inputs: { [bore]: `${part}.guideBore`, [stem]: `${part}.stemDiameter` } as Readonly<
      Record<string, string>
    >,
    formula: `${bore} - ${stem}`,
    compute: (n) => n[bore]! - n[stem]!,
    shape: "monotone",
    hot: { quantity: `${side}GuideClearanceHot` },
    valid: "both measured at the same temperature, the guide fitted",
    sources: [{ id: "definition" }],
    examples: [{ given: { [bore]: "8.010 mm", [stem]: "7.955 mm" }, expect: "0.055 mm" }],
  });
}
