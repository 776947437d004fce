import { greatestShakingForce, type MovingMasses, type RevolvingMass } from "@trialfit/mechanics";
import type { TableRow } from "../read/FieldValue.ts";
import { quantity } from "./Quantity.ts";
import { reciprocatingMasses } from "./shaking.ts";

const inputs = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  m_rec: "reciprocatingMass",
  m_b: "connectingRod.bigEndMass",
  n_r: "crankshaft.rodsPerPin",
  m_bd: "crankshaft.designBobweight",
  n: "targets.speed",
} as const;
type Numbers = Readonly<Record<keyof typeof inputs, number>>;

/**
 * What the crankshaft turns about each cylinder’s place: the big end, less this rod’s share of the bobweight that the
 * counterweights outweigh. Where they outweigh more it stands opposite.
 */
function revolvingMasses(n: Numbers, places: MovingMasses["reciprocating"]): readonly RevolvingMass[] {
  const left = n.m_b - n.m_bd / n.n_r;
  return places.map(({ pinAngle, axialPosition }) => ({
    mass: Math.abs(left),
    radius: n.r,
    angle: left < 0 ? pinAngle + Math.PI : pinAngle,
    axialPosition,
  }));
}

/** Pistons in their banks, and what turns with the crankshaft and is not balanced on it. */
function movingMasses(n: Numbers, throws: readonly TableRow[]): MovingMasses {
  const { reciprocating } = reciprocatingMasses(n, throws);
  return { reciprocating, revolving: revolvingMasses(n, reciprocating) };
}

interface WholeShaking {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly of: "force" | "couple";
  readonly meaning: string;
  /** For a single whose counterweights take all that turns and half of what goes up and down, and for two such on pins opposite. */
  readonly single: string;
  readonly twin: string;
}

const sizes = {
  r: "47 mm",
  l: "144.5 mm",
  e: "0 mm",
  m_rec: "600 g",
  m_b: "400 g",
  n_r: "1",
  n: "6000 rpm",
} as const;

/** Declares the greatest shaking over a turn, of all orders and of the rotating masses. */
export function wholeShaking({ of, single, twin, ...own }: WholeShaking) {
  return quantity({
    ...own,
    unit: of === "force" ? "kN" : "N m",
    decimals: of === "force" ? 2 : 0,
    system: "balance",
    inputs,
    tables: { throws: "crankshaft.throws" },
    method: `The exact acceleration of every piston along its bank, and the pull of every big end less its share of the bobweight of the balance at its crankpin${of === "couple" ? ", times the distance from the middle of the crankshaft" : ""}, added up at every crank angle; the greatest size over a turn.`,
    compute: (n, _words, { throws }) =>
      greatestShakingForce({ ...movingMasses(n, throws), angularSpeed: n.n })[of].value,
    shape: "guarded",
    valid:
      "equal masses in all cylinders; the bobweight of the balance alike on every crankpin; a stiff block",
    sources: [{ id: "taylor" }],
    examples: [
      { given: { ...sizes, m_bd: "700 g", throws: "0 deg, 0 deg, 0 mm, 0 deg" }, expect: single },
      {
        given: {
          ...sizes,
          m_bd: "700 g",
          throws: "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 0 deg, 100 mm, 540 deg",
        },
        expect: twin,
      },
    ],
    display: true,
  });
}
