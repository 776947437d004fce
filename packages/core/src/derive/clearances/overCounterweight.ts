import { pistonToCounterweight } from "@trialfit/mechanics";
import { BELOW_THE_PISTON } from "../coldOnly.ts";
import { quantity } from "../Quantity.ts";

/** A lower edge of the piston, or of what hangs in it, that passes over the counterweights. */
interface PistonEdge {
  readonly words: string;
  /** Name in the computation → field path: how low it lies, and from where to where across. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly edge: (numbers: Readonly<Record<string, number>>) => {
    lowestPointDepth: number;
    lowestHalfWidth: number;
    gapHalfWidth?: number;
  };
  /** Invented sizes for examples. */
  readonly given: Readonly<Record<string, string>>;
}

export const lowestEdge: PistonEdge = {
  words: "the lowest part of the piston",
  inputs: { h_lo: "piston.lowestPointBelowPin", x_lo: "piston.lowestPointHalfWidth" },
  edge: ({ h_lo, x_lo }) => ({ lowestPointDepth: h_lo!, lowestHalfWidth: x_lo! }),
  given: { h_lo: "19.5 mm", x_lo: "11 mm" },
};

export const skirtEdge: PistonEdge = {
  words: "the end of the skirt",
  inputs: { h_s: "piston.skirtBelowPin", D: "piston.diameter", x_s: "piston.skirtInnerHalfWidth" },
  edge: ({ h_s, D, x_s }) => ({
    lowestPointDepth: h_s!,
    lowestHalfWidth: Math.max(D! / 2, x_s!),
    gapHalfWidth: x_s!,
  }),
  given: { h_s: "27 mm", D: "86.41 mm", x_s: "40 mm" },
};

export const smallEndEdge: PistonEdge = {
  words: "the eye of the small end",
  inputs: { D_so: "connectingRod.smallEndOuterDiameter" },
  edge: ({ D_so }) => ({ lowestPointDepth: D_so! / 2, lowestHalfWidth: 0 }),
  given: { D_so: "33 mm" },
};

interface Kind {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly edge: PistonEdge;
  readonly expect: string;
}

const drive = {
  r: "throwRadius",
  l: "connectingRod.length",
  e: "pinLineOffset",
  R_cw: "crankshaft.counterweightRadius",
  psi_cw: "crankshaft.counterweightHalfSpan",
} as const;
const driveGiven = { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", R_cw: "74 mm", psi_cw: "65 deg" } as const;

function nearestOf(edge: PistonEdge, n: Readonly<Record<string, number>>) {
  return pistonToCounterweight({
    crank: { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! },
    ...edge.edge(n),
    counterweightRadius: n.R_cw!,
    counterweightHalfSpan: n.psi_cw!,
  });
}

function common(edge: PistonEdge) {
  return {
    system: "clearances",
    inputs: { ...drive, ...edge.inputs } as Readonly<Record<string, string>>,
    shape: "guarded",
    valid: "counterweights with a round rim; stiff parts without play",
    sources: [{ id: "plane-geometry" }],
  } as const;
}

/** Least distance between an edge of the piston and the rim of the counterweights. */
export function edgeToCounterweight({
  edge,
  expect,
  ...own
}: Kind & { readonly meaning: string; readonly display?: true }) {
  return quantity({
    ...common(edge),
    ...own,
    unit: "mm",
    decimals: 2,
    hot: BELOW_THE_PISTON,
    method: `What is lowest of ${edge.words} moves with the pin; its least distance to the rim is taken over all crank angles at which the counterweight stands below it.`,
    compute: (n) => nearestOf(edge, n).clearance,
    examples: [{ given: { ...driveGiven, ...edge.given }, expect }],
  });
}

/** Crank angle at which that distance is least. */
export function edgeToCounterweightAngle({ edge, expect, ...own }: Kind) {
  return quantity({
    ...common(edge),
    ...own,
    unit: "deg",
    decimals: 1,
    meaning: `Crank angle after top dead centre at which ${edge.words} comes closest to the rim of the counterweights.`,
    method: "The crank angle at which the least distance is found.",
    compute: (n) => nearestOf(edge, n).angle,
    examples: [{ given: { ...driveGiven, ...edge.given }, expect }],
    display: true,
    nominalOnly: true,
  });
}
