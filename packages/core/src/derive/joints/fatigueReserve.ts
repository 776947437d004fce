import { boltFatigueReserve } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { LoadedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares the reserve of a fastener against fatigue under its working load. */
export function fatigueReserve(joint: LoadedJoint, expect: string) {
  const { prefix, word, part, index, system } = joint;
  const [F, A, load] = [joint.preload[0], joint.stressArea[0], joint.load[0]];
  const share = `Phi_${index}`;
  return quantity({
    id: `${prefix}FatigueReserve`,
    name: `Fatigue reserve of a ${word}`,
    symbol: `S_D${index}`,
    unit: "1",
    decimals: 2,
    system,
    meaning: `How many times the working load could swing before a ${word} breaks in the long run, its preload held. A joint that opens breaks its bolts at once, whatever this says.`,
    inputs: {
      [F]: joint.preload[1],
      [A]: joint.stressArea[1],
      [load]: joint.load[1],
      [share]: `${prefix}LoadFactor`,
      S_e: `${part}.enduranceStrength`,
      R_m: `${part}.tensileStrength`,
    } as Paths,
    formula: `S_e * (R_m - ${F} / ${A}) / (${share} * ${load} / (2 * ${A}) * (R_m + S_e))`,
    compute: (n: Numbers) =>
      boltFatigueReserve({
        preloadStress: n[F]! / n[A]!,
        amplitude: (n[share]! * n[load]!) / (2 * n[A]!),
        enduranceStrength: n.S_e!,
        tensileStrength: n.R_m!,
      }),
    shape: "guarded",
    valid: "pull alone: bending of cap or head adds to it",
    sources: [{ id: "shigley", where: "fatigue loading of tension joints" }],
    examples: [
      {
        given: {
          [F]: "60 kN",
          [A]: "75.85 mm2",
          [load]: "20 kN",
          [share]: "0.12",
          S_e: "60 MPa",
          R_m: "1350 MPa",
        },
        expect,
      },
    ],
    display: true,
  });
}
