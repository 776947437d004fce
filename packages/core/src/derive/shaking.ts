import { type MovingMasses, shakingHarmonic } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";
import { fromMiddle } from "./fromMiddle.ts";
import { quantity } from "./Quantity.ts";

/** The reciprocating masses of every cylinder as mechanics takes them. */
export function reciprocatingMasses(
  n: Readonly<Record<"r" | "l" | "e" | "m_rec", number>>,
  throws: readonly TableRow[],
): MovingMasses {
  const crank = { throwRadius: n.r, rodLength: n.l, pinLineOffset: n.e };
  const positions = fromMiddle(throws);
  return {
    reciprocating: throws.map((row, index) => ({
      crank,
      mass: n.m_rec,
      pinAngle: cellNumber(row, "pin"),
      bankAngle: cellNumber(row, "bank"),
      axialPosition: positions[index]!,
    })),
    revolving: [],
  };
}

/** Which part of the shaking one quantity shows. */
interface Shaking {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly of: "force" | "couple";
  readonly order: 1 | 2;
  /** The whole, or only the part that turns against the crankshaft. */
  readonly part: "greatest" | "backward";
  readonly meaning: string;
  /** Value for a row of four with a flat crankshaft; invented sizes. */
  readonly four: string;
  /** Value for a V of eight at 90° with a cross-plane crankshaft. */
  readonly eight: string;
  /** Value for a row of two on crankpins at right angles, by hand: two equal forces a quarter turn apart. */
  readonly two: string;
}

const row = (rows: readonly (readonly number[])[]) =>
  rows
    .map(([pin, bank, position, fires]) => `${pin} deg, ${bank} deg, ${position} mm, ${fires} deg`)
    .join("; ");

const inlineFour = row([
  [0, 0, 0, 0],
  [180, 0, 100, 540],
  [180, 0, 200, 180],
  [0, 0, 300, 360],
]);

const crossPlaneEight = row([
  [0, -45, 0, 675],
  [0, 45, 0, 45],
  [90, -45, 112, 225],
  [90, 45, 112, 315],
  [270, -45, 224, 405],
  [270, 45, 224, 495],
  [180, -45, 336, 135],
  [180, 45, 336, 585],
]);

const quarterTwo = row([
  [0, 0, 0, 0],
  [90, 0, 100, 450],
]);

/** Declares a harmonic of the shaking force or couple of the whole engine. */
export function shaking({ of, order, part, four, eight, two, ...own }: Shaking) {
  const sizes = { r: "47 mm", l: "144.5 mm", e: "0 mm", m_rec: "634 g", n: "7800 rpm" };
  return quantity({
    ...own,
    unit: of === "force" ? "kN" : "N m",
    decimals: of === "force" ? 2 : 0,
    system: "balance",
    inputs: {
      r: "throwRadius",
      l: "connectingRod.length",
      e: "pinLineOffset",
      m_rec: "reciprocatingMass",
      n: "targets.speed",
    },
    tables: { throws: "crankshaft.throws" },
    method: `The ${order === 1 ? "first" : "second"} harmonic of every cylinder’s reciprocating force, added along its bank at its crankpin’s angle${of === "couple" ? ", times its distance from the middle of the crankshaft" : ""}.`,
    compute: (n, _words, { throws }) =>
      shakingHarmonic({ ...reciprocatingMasses(n, throws), order, angularSpeed: n.n })[of][part],
    shape: "guarded",
    valid: "equal masses in all cylinders, rotating masses balanced, an engine block that does not bend",
    sources: [{ id: "taylor" }],
    examples: [
      { given: { ...sizes, throws: inlineFour }, expect: four },
      { given: { ...sizes, throws: crossPlaneEight }, expect: eight },
      { given: { ...sizes, throws: quarterTwo }, expect: two },
    ],
    display: true,
  });
}
