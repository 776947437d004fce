import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Greatest lift at the valve. */
export function valveLift(side: Side) {
  const { word, index, part } = sides[side];
  return quantity({
    id: `${side}ValveLift`,
    name: `${word} valve lift`,
    symbol: `L_${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Greatest lift at the ${side} valve: the lobe’s lift by the rocker ratio, less the lash.`,
    inputs: {
      [`h_${index}`]: `camshaft.${side}LobeLift`,
      R_r: "valveDrive.rockerRatio",
      [`s_${index}`]: `${part}.lash`,
    } as Readonly<Record<string, string>>,
    formula: `h_${index} * R_r - s_${index}`,
    compute: (n) => n[`h_${index}`]! * n.R_r! - n[`s_${index}`]!,
    shape: "monotone",
    valid: "a rocker ratio that is meant at full lift; a stiff drive",
    sources: [{ id: "definition" }],
    examples: [
      { given: { [`h_${index}`]: "10.4 mm", R_r: "1.6", [`s_${index}`]: "0.45 mm" }, expect: "16.19 mm" },
    ],
  });
}
