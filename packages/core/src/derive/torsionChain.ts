import { type TorsionalChain, throwInertia, throwStiffness, torsionalModes } from "@trialfit/mechanics";
import { cellNumber } from "../read/cellNumber.ts";
import type { TableRow } from "../read/FieldValue.ts";
import type { Route } from "./Quantity.ts";
import { crankThrow, throwExample, throwInputs } from "./throwStiffness.ts";

/** What the torsional chain is built from when nothing better is known. */
export const chainInputs = {
  ...throwInputs,
  z: "block.cylinders",
  n_r: "crankshaft.rodsPerPin",
  J_c: "crankshaft.inertia",
  m_b: "connectingRod.bigEndMass",
  m_rec: "reciprocatingMass",
  J_h: "damper.hubInertia",
  J_f: "flywheel.inertia",
} as const;

export const chainTables = { stations: "crankshaft.torsionStations" } as const;

export const chainRoutes: readonly [Route, Route] = [
  { needs: Object.keys(chainTables) },
  {
    needs: Object.keys(chainInputs),
    assumes:
      "a torsional chain estimated from journal and web sizes, good to about 20 % in stiffness: have it computed or measured before the engine is run near a critical speed",
  },
];

/** An invented row of four. */
export const chainExample = {
  ...throwExample,
  z: "4",
  n_r: "1",
  J_c: "0.036 kg m2",
  m_b: "405 g",
  m_rec: "634 g",
  J_h: "0.006 kg m2",
  J_f: "0.09 kg m2",
} as const;

/** Damper hub, throws with their share of rods and pistons, flywheel. */
function estimatedChain(n: Readonly<Record<keyof typeof chainInputs, number>>): TorsionalChain {
  const throws = n.z / n.n_r;
  if (!Number.isInteger(throws)) throw new RangeError(`${n.z} cylinders do not share pins of ${n.n_r} rods`);
  const inertia = throwInertia({
    crankInertia: n.J_c / throws,
    rods: n.n_r,
    rotatingRodMass: n.m_b,
    reciprocatingMass: n.m_rec,
    throwRadius: n.r,
  });
  const stiffness = throwStiffness(crankThrow(n));
  return {
    inertias: [n.J_h, ...Array.from({ length: throws }, () => inertia), n.J_f],
    stiffnesses: Array.from({ length: throws + 1 }, () => stiffness),
  };
}

/** The chain of a build, by whichever way it is known. */
export function torsionChain(
  n: Readonly<Record<keyof typeof chainInputs, number>>,
  { stations }: Readonly<Record<keyof typeof chainTables, readonly TableRow[]>>,
): TorsionalChain {
  if (stations === undefined) return estimatedChain(n);
  return {
    inertias: stations.map((one) => cellNumber(one, "inertia")),
    stiffnesses: stations.slice(0, -1).map((one) => cellNumber(one, "stiffness")),
  };
}

/** Natural frequencies of the free chain that twist it, lowest first [rad/s]. */
export function twistingModes(chain: TorsionalChain) {
  return torsionalModes(chain).filter(({ angularFrequency }) => angularFrequency > 1);
}
