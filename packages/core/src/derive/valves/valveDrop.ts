import { openValveToPiston } from "@trialfit/mechanics";
import { stepTo } from "../coldOnly.ts";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Room that is left if a valve stands fully open while the piston is at the top. */
export function valveDrop(side: Side) {
  const { word, index } = sides[side];
  const [shut, lift] = [`c_0${index}`, `L_${index}`];
  return quantity({
    id: `${side}ValveDrop`,
    name: `${word} valve to piston, drive failed`,
    symbol: `c_f${index}`,
    unit: "mm",
    decimals: 1,
    system: "valve-train",
    meaning: `Room between the fully open ${side} valve and the piston at top dead centre. Negative: a broken chain, belt or gear bends valves.`,
    inputs: { [shut]: `${side}ValveShutDistance`, [lift]: `${side}ValveLift` } as Readonly<
      Record<string, string>
    >,
    formula: `${shut} - ${lift}`,
    compute: (n) => openValveToPiston({ shutValveDistance: n[shut]!, greatestLift: n[lift]! }),
    shape: "guarded",
    hot: stepTo("room between valve and piston over the cycle"),
    valid: "a valve that stops at its greatest lift",
    sources: [{ id: "definition" }],
    examples: [{ given: { [shut]: "4.8 mm", [lift]: "11 mm" }, expect: "-6.2 mm" }],
    display: true,
  });
}
