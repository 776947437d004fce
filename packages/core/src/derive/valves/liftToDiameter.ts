import { curtainRatio } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Lift of a valve over its head diameter. */
export function liftToDiameter(side: Side) {
  const { word, index, part } = sides[side];
  const [lift, diameter] = [`L_${index}`, `d_${index}`];
  return quantity({
    id: `${side}LiftToDiameter`,
    name: `${word} lift to diameter`,
    symbol: `q_${index}`,
    unit: "1",
    decimals: 3,
    system: "valve-train",
    meaning:
      "Greatest lift over the diameter of the head. At a quarter the curtain round the valve is as large as the head; more lift adds little area.",
    inputs: { [lift]: `${side}ValveLift`, [diameter]: `${part}.headDiameter` } as Readonly<
      Record<string, string>
    >,
    formula: `${lift} / ${diameter}`,
    compute: (n) => curtainRatio({ lift: n[lift]!, valveDiameter: n[diameter]! }),
    shape: "monotone",
    valid: "poppet valves; the stem in the port is left out",
    sources: [{ id: "heywood" }],
    examples: [{ given: { [lift]: "11 mm", [diameter]: "35 mm" }, expect: "0.314" }],
    display: true,
  });
}
