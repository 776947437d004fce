import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** One opening or closing of a valve as people count it. */
interface Event {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly side: Side;
  /** Whether the angle is counted from the overlap or from the bottom dead centre on the other side of the lobe. */
  readonly from: "overlap" | "bottom";
  readonly counted: string;
  readonly expect: string;
}

/** An opening or closing from the lobe centre and the duration. Both ends of a lobe follow one pattern. */
export function valveEvent({ side, from, counted, expect, ...own }: Event) {
  const { index } = sides[side];
  const [duration, centre] = [`D_${index}`, `theta_c${index}`];
  return quantity({
    ...own,
    unit: "deg",
    decimals: 1,
    system: "valve-train",
    meaning: `Crank angle ${counted} at which the ${side} valve passes the checking lift; negative on the other side of the dead centre.`,
    inputs: {
      [duration]: `camshaft.${side}Duration`,
      [centre]: `camshaft.${side}Centre`,
    } as Readonly<Record<string, string>>,
    formula: from === "overlap" ? `${duration} / 2 - ${centre}` : `${centre} + ${duration} / 2 - pi`,
    compute: (n) =>
      from === "overlap" ? n[duration]! / 2 - n[centre]! : n[centre]! + n[duration]! / 2 - Math.PI,
    shape: "monotone",
    valid: "a lobe that opens as it closes; the lift at which the duration is stated",
    sources: [{ id: "plane-geometry" }],
    examples: [{ given: { [duration]: "276 deg", [centre]: "110 deg" }, expect }],
    display: true,
  });
}
