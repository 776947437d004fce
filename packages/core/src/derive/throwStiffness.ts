import type { CrankThrow } from "@trialfit/mechanics";
import { STEEL } from "../tables/usualMetals.ts";

/** What the stiffness of a throw is estimated from. */
export const throwInputs = {
  L_m: "crankshaft.mainJournalLength",
  D_m: "crankshaft.mainJournalDiameter",
  L_cp: "crankshaft.crankpinLength",
  D_p: "crankshaft.crankpinDiameter",
  h_w: "crankshaft.webThickness",
  w_w: "crankshaft.webWidth",
  r: "throwRadius",
  E_c: "crankshaft.modulus",
} as const;

export const throwExample = {
  L_m: "24 mm",
  D_m: "57 mm",
  L_cp: "22.05 mm",
  D_p: "48 mm",
  h_w: "17 mm",
  w_w: "90 mm",
  r: "47 mm",
  E_c: "206 GPa",
} as const;

type Numbers = Readonly<Record<keyof typeof throwInputs, number>>;

/** A solid throw as mechanics takes it. */
export function crankThrow({ L_m, D_m, L_cp, D_p, h_w, w_w, r, E_c }: Numbers): CrankThrow {
  return {
    journalLength: L_m,
    journalDiameter: D_m,
    journalBore: 0,
    crankpinLength: L_cp,
    crankpinDiameter: D_p,
    crankpinBore: 0,
    webThickness: h_w,
    webWidth: w_w,
    throwRadius: r,
    // Ductile iron’s ratio is 0.01 less, which moves the modulus of shear by under 1 %.
    shearModulus: E_c / (2 * (1 + STEEL.poissonRatio)),
  };
}
