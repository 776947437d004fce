import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

/** Declares the speed of a journal’s surface. */
export function surfaceSpeed({ prefix, word, index, journal }: Bearing) {
  const D = journal[0];
  return quantity({
    id: `${prefix}SurfaceSpeed`,
    name: `Surface speed in the ${word}`,
    symbol: `v_${index}`,
    unit: "m/s",
    decimals: 1,
    system: "bearings",
    meaning: "Speed of the journal’s surface at the highest speed: it makes the film and the heat.",
    inputs: { n: "targets.speed", [D]: journal[1] } as Paths,
    formula: `n * ${D} / 2`,
    compute: (n: Numbers) => (n.n! * n[D]!) / 2,
    shape: "monotone",
    valid: "the shell at rest; a rod’s shell swings a little besides",
    sources: [{ id: "definition" }],
    examples: [{ given: { n: "7800 rpm", [D]: "48 mm" }, expect: "19.6 m/s" }],
    display: true,
  });
}
