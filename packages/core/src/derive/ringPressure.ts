import { ringMeanPressure } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

interface RingPressure {
  readonly id: string;
  readonly which: "top" | "oil";
  readonly symbol: string;
  readonly force: string;
  readonly height: string;
  readonly valid: string;
}

/** Declares the mean pressure of a ring on the cylinder by its own tension. */
export function ringPressure({ which, force, height, valid, ...own }: RingPressure) {
  return quantity({
    ...own,
    name: `${which === "top" ? "Top" : "Oil"} ring contact pressure`,
    unit: "MPa",
    decimals: 3,
    system: "rings",
    meaning: `Mean pressure of the ${which} ring on the cylinder by its own tension, without gas. It decides friction, wear and how well the ring follows the bore.`,
    inputs: {
      [force]: `ringSet.${which}RingTangentialForce`,
      B: "block.bore",
      [height]: `ringSet.${which}RingHeight`,
    } as Readonly<Record<string, string>>,
    formula: `2 * ${force} / (B * ${height})`,
    compute: (n) => ringMeanPressure({ tangentialForce: n[force]!, bore: n.B!, ringHeight: n[height]! }),
    shape: "monotone",
    valid,
    sources: [{ id: "plane-geometry", where: "statics of a thin ring" }],
    examples: [{ given: { [force]: "12 N", B: "86.5 mm", [height]: "1.2 mm" }, expect: "0.231 MPa" }],
    display: true,
  });
}
