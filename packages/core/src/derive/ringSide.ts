import { ringSideClearance } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

interface RingSide {
  readonly id: string;
  readonly which: "Second" | "Oil";
  readonly symbol: string;
  readonly groove: string;
  readonly ring: string;
}

/** Declares the axial clearance of a ring in its groove. */
export function ringSide({ which, groove, ring, ...own }: RingSide) {
  const word = which.toLowerCase();
  return quantity({
    ...own,
    name: `${which} ring side clearance`,
    unit: "mm",
    decimals: 3,
    system: "rings",
    meaning: `Height of the ${word} ring’s groove less the height of the ring. Too little and the ring sticks as the groove cokes; too much and it hammers.`,
    inputs: { [groove]: `piston.${word}GrooveHeight`, [ring]: `ringSet.${word}RingHeight` } as Readonly<
      Record<string, string>
    >,
    formula: `${groove} - ${ring}`,
    compute: (n) => ringSideClearance({ grooveHeight: n[groove]!, ringHeight: n[ring]! }),
    shape: "monotone",
    hot: { quantity: `${own.id}Hot` },
    valid: "flat grooves and rings, cold",
    sources: [{ id: "definition" }],
    examples: [{ given: { [groove]: "1.23 mm", [ring]: "1.20 mm" }, expect: "0.030 mm" }],
    display: true,
  });
}
