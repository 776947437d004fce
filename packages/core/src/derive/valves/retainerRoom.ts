import { ALONG_THE_STEM } from "../coldOnly.ts";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Room between the spring retainer and the stem seal at full lift. */
export function retainerRoom(side: Side) {
  const { word, index, part } = sides[side];
  const [shut, lift] = [`g_r_${index}`, `L_${index}`];
  return quantity({
    id: `${side}RetainerToSeal`,
    name: `${word} retainer to seal`,
    symbol: `c_s${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Room between the spring retainer of the ${side} valve and the stem seal or guide at full lift; negative when they strike.`,
    inputs: { [shut]: `${part}.retainerToSeal`, [lift]: `${side}ValveLift` } as Readonly<
      Record<string, string>
    >,
    formula: `${shut} - ${lift}`,
    compute: (n) => n[shut]! - n[lift]!,
    shape: "monotone",
    hot: ALONG_THE_STEM,
    valid: "measured with the seal fitted",
    sources: [{ id: "definition" }],
    examples: [{ given: { [shut]: "14 mm", [lift]: "12.3 mm" }, expect: "1.70 mm" }],
  });
}
