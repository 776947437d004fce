import { greatestShakingForce, type MovingMasses } from "@trialfit/mechanics";
import type { TableRow } from "../read/FieldValue.ts";
import { quantity } from "./Quantity.ts";
import { revolvingInputs, revolvingMasses } from "./revolving.ts";
import { reciprocatingMasses } from "./shaking.ts";

const inputs = {
  ...revolvingInputs,
  l: "connectingRod.length",
  e: "pinLineOffset",
  m_rec: "reciprocatingMass",
  n: "targets.speed",
} as const;
type Numbers = Readonly<Record<keyof typeof inputs, number>>;

/** Pistons in their banks, and what turns with the crankshaft and is not balanced on it. */
export function movingMasses(n: Numbers, throws: readonly TableRow[]): MovingMasses {
  const { reciprocating } = reciprocatingMasses(n, throws);
  return { reciprocating, revolving: revolvingMasses(n, throws) };
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
