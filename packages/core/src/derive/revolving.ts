import { type RevolvingMass, staticUnbalance, twoPlaneBalance, type Unbalance } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";
import { fromMiddle } from "./fromMiddle.ts";
import { quantity } from "./Quantity.ts";

/** What the masses that turn with the crankshaft and are not balanced on it need. */
export const revolvingInputs = {
  r: "throwRadius",
  m_b: "connectingRod.bigEndMass",
  n_r: "crankshaft.rodsPerPin",
  m_bd: "crankshaft.designBobweight",
} as const;
type Numbers = Readonly<Record<keyof typeof revolvingInputs, number>>;

/**
 * What the crankshaft turns about each cylinder’s place: the big end, less this rod’s share of the bobweight that the
 * counterweights outweigh. Where they outweigh more it stands opposite.
 */
export function revolvingMasses(n: Numbers, throws: readonly TableRow[]): readonly RevolvingMass[] {
  const left = n.m_b - n.m_bd / n.n_r;
  const positions = fromMiddle(throws);
  return throws.map((row, index) => {
    const pinAngle = cellNumber(row, "pin");
    return {
      mass: Math.abs(left),
      radius: n.r,
      angle: left < 0 ? pinAngle + Math.PI : pinAngle,
      axialPosition: positions[index]!,
    };
  });
}

/** Where what is left over is looked at. */
const places = {
  whole: (masses: readonly RevolvingMass[]) => staticUnbalance(masses),
  first: (masses: readonly RevolvingMass[]) => inPlanes(masses).first,
  last: (masses: readonly RevolvingMass[]) => inPlanes(masses).second,
} as const;

/** What has to be added in the planes of the first and the last throw. */
function inPlanes(revolving: readonly RevolvingMass[]) {
  const positions = revolving.map(({ axialPosition }) => axialPosition);
  return twoPlaneBalance({
    revolving,
    firstPlane: Math.min(...positions),
    secondPlane: Math.max(...positions),
  });
}

interface Revolving {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  readonly method: string;
  readonly place: keyof typeof places;
  readonly of: keyof Unbalance;
  /** For two throws that lie opposite, and for two at right angles; invented. */
  readonly opposite: string;
  readonly square: string;
}

/** Declares what the rotating masses leave unbalanced, or what would balance them, or where that lies. */
export function revolving({ place, of, opposite, square, ...own }: Revolving) {
  const sizes = { r: "47 mm", m_b: "400 g", n_r: "1", m_bd: "700 g" };
  const two = (pin: string) => `30 deg, 0 deg, 0 mm, 30 deg; ${pin} deg, 0 deg, 100 mm, 570 deg`;
  return quantity({
    ...own,
    ...(of === "unbalance" ? { unit: "g mm", decimals: 0 } : { unit: "deg", decimals: 1, nominalOnly: true }),
    system: "balance",
    inputs: revolvingInputs,
    tables: { throws: "crankshaft.throws" },
    compute: (n, _words, { throws }) => places[place](revolvingMasses(n, throws))[of],
    shape: "guarded",
    valid:
      "big ends and a bobweight alike on every crankpin; what a balancer finds on the crankshaft itself comes on top",
    sources: [{ id: "taylor" }],
    examples: [
      { given: { ...sizes, throws: two("210") }, expect: opposite },
      { given: { ...sizes, throws: two("120") }, expect: square },
    ],
    display: true,
  });
}
