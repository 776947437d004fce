import { shutValveDistance } from "@trialfit/mechanics";
import { stepTo } from "../coldOnly.ts";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Room between a shut valve and the piston at top dead centre. */
export function valveShutDistance(side: Side) {
  const { word, index, part } = sides[side];
  return quantity({
    id: `${side}ValveShutDistance`,
    name: `${word} valve to piston, shut`,
    symbol: `c_0${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Room along the stem between the shut ${side} valve and the floor of its pocket with the piston at top dead centre.`,
    inputs: {
      h_d: "deckClearance",
      t_g: "headGasket.compressedThickness",
      [`z_${index}`]: `${part}.recess`,
      [`tau_${index}`]: `${part}.tilt`,
      [`p_${index}`]: `${part}.pocketDepth`,
    } as Readonly<Record<string, string>>,
    formula: `(h_d + t_g + z_${index}) * cos(tau_${index}) + p_${index}`,
    compute: (n) =>
      shutValveDistance({
        deckClearance: n.h_d!,
        gasketThickness: n.t_g!,
        valveRecess: n[`z_${index}`]!,
        valveTilt: n[`tau_${index}`]!,
        pocketDepth: n[`p_${index}`]!,
      }),
    shape: "guarded",
    hot: stepTo("room between valve and piston over the cycle"),
    valid: "a pocket whose floor is parallel to the valve’s face. A measured value outranks it",
    sources: [{ id: "plane-geometry" }],
    examples: [
      {
        given: {
          h_d: "0.1 mm",
          t_g: "1 mm",
          [`z_${index}`]: "1.6 mm",
          [`tau_${index}`]: "12 deg",
          [`p_${index}`]: "2.2 mm",
        },
        expect: "4.84 mm",
      },
    ],
  });
}
