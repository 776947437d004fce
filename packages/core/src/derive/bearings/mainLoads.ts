import { type LoadCycle, mainBearingLoads } from "@trialfit/mechanics";
import { cellNumber } from "../../read/cellNumber.ts";
import type { TableRow } from "../../read/FieldValue.ts";
import { type CycleNumbers, crankpinCycle, cycleForceExample, cycleForceInputs } from "../runningCylinder.ts";

/** What the loads of the main bearings need. */
export const mainLoadInputs = {
  ...cycleForceInputs,
  n_r: "crankshaft.rodsPerPin",
  m_bd: "crankshaft.designBobweight",
} as const;
export const mainLoadTables = { throws: "crankshaft.throws" } as const;

/** Ways to the loads of the main bearings, the surest first. */
export const mainLoadRoutes = [
  { needs: ["throws", "n_r", "m_bd"] },
  {
    needs: ["throws", "n_r"],
    assumes: "the crankshaft is in balance by itself: no bobweight of its balance is entered",
  },
  {
    needs: [],
    assumes: "each main bearing takes half of one rod’s load: no throws are entered",
  },
] as const;

/** Loads of all main bearings over the cycle, at the power speed. */
export function mainLoadCycles(
  numbers: CycleNumbers & Readonly<Record<"n_r" | "m_bd", number>>,
  { throws }: { readonly throws: readonly TableRow[] },
  route: number,
): readonly LoadCycle[] {
  const { r, n_P, n_r, m_bd } = numbers;
  const alone = [{ bank: 0, position: 0, fires: 0 }];
  const cylinders =
    route === 2
      ? alone
      : throws.map((row) => ({
          bank: cellNumber(row, "bank"),
          position: cellNumber(row, "position"),
          fires: cellNumber(row, "fires"),
        }));
  return mainBearingLoads({
    rod: crankpinCycle(numbers),
    cylinders,
    rodsPerPin: route === 2 ? 1 : n_r,
    balanceMass: route === 0 ? m_bd : 0,
    throwRadius: r,
    angularSpeed: n_P,
  });
}

const flatFour =
  "0 deg, 0 deg, 0 mm, 0 deg; 180 deg, 0 deg, 95 mm, 540 deg; 180 deg, 0 deg, 190 mm, 180 deg; 0 deg, 0 deg, 285 mm, 360 deg";

/** One example for each way. */
export const mainLoadExamples = [
  { ...cycleForceExample, n_r: "1", m_bd: "405 g", throws: flatFour },
  { ...cycleForceExample, n_r: "1", throws: flatFour },
  cycleForceExample,
] as const;

export const mainLoadMethod =
  "Each throw lies on the two main bearings beside it, half its load on each; a bearing adds up its two throws, each at its own place in the cycle. The load of a throw is that of its rods over the cycle, gas and inertia, less the pull of the bobweight that the crankshaft was balanced with.";

export const mainLoadValid =
  "a main bearing on each side of every throw; a crankshaft taken as beams from bearing to bearing, within about 20 %; an even speed";
