import { threadGeometry, tighteningStress } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Diameter midway between pitch and root diameter, as a formula. */
const CORE = "(d - 13 * sqrt(3) / 24 * P)";

/** Declares the share of the yield strength that pull and twist take together while tightening. */
export function tighteningUse({ prefix, word, part, index, system, preload }: Joint) {
  const [F, path] = preload;
  return quantity({
    id: `${prefix}TighteningUse`,
    name: `Use of the ${word}’s yield strength while tightening`,
    symbol: `nu_t${index}`,
    unit: "1",
    decimals: 3,
    system,
    meaning: `Pull and twist of a ${word}’s thread at the end of tightening, as one stress, over its yield strength. Above 1 it stretches for good; half of the twist is gone afterwards.`,
    inputs: {
      [F]: path,
      d: `${part}.threadDiameter`,
      P: `${part}.threadPitch`,
      mu_t: `${part}.threadFriction`,
      R_p: `${part}.yieldStrength`,
    } as Paths,
    formula: `4 * ${F} / (pi * ${CORE}^2 * R_p) * sqrt(1 + 48 * ((P / (2 * pi) + mu_t * (d - 3 * sqrt(3) / 8 * P) / sqrt(3)) / ${CORE})^2)`,
    compute: (n: Numbers) =>
      tighteningStress({
        preload: n[F]!,
        thread: threadGeometry({ majorDiameter: n.d!, pitch: n.P! }),
        threadFriction: n.mu_t!,
      }) / n.R_p!,
    shape: "guarded",
    valid: "tightened by turning; a stud that is stretched by its nut alone twists less",
    sources: [{ id: "vdi-2230" }],
    examples: [
      { given: { [F]: "66 kN", d: "11 mm", P: "1.25 mm", mu_t: "0.11", R_p: "1200 MPa" }, expect: "0.844" },
    ],
    display: true,
  });
}
