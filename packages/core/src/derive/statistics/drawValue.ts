import type { DimensionValue } from "../../read/FieldValue.ts";
import type { Random } from "../seeded.ts";
import { drawNormal } from "./drawNormal.ts";

/** Where in its tolerance a dimension is taken to lie: evenly, or normally with so many standard deviations to its end. */
export type Law = { readonly kind: "even" } | { readonly kind: "normal"; readonly deviations: 2 | 3 };

/**
 * The law by which a dimension is drawn. Of an assumed value only the ends are known, so every place between them is
 * as likely. A reading scatters by its expanded uncertainty, which is two standard deviations (k = 2). Other parts are
 * made to a tolerance of three (common practice).
 *
 * Source: JCGM 100:2008 for the first two (from memory).
 */
export function lawOf({ provenance, uncertainty }: DimensionValue): Law {
  if (provenance === "assumed") return { kind: "even" };
  return { kind: "normal", deviations: uncertainty === undefined ? 3 : 2 };
}

/** How engines are drawn, for people. */
export const aboutDraws =
  "Each dimension is drawn within its tolerance, independently of the others: normally distributed about the middle of its tolerance and cut off at its ends, which lie 3 standard deviations away (2 for a measured value, whose uncertainty is stated so); evenly where the value is assumed, since only its ends are known.";

/**
 * One number within the tolerance of a dimension [SI]. Where it was measured for each of several (cylinders, say) and
 * stands for all of them, one of those is drawn first.
 */
export function drawValue(value: DimensionValue, random: Random): number {
  const places = Object.values(value.positions ?? {});
  if (places.length > 0) {
    const all = value.elsewhere === undefined ? places : [...places, value.elsewhere];
    return drawValue(all[Math.floor(random() * all.length)]!, random);
  }
  const law = lawOf(value);
  const half = (value.high - value.low) / 2;
  const part = law.kind === "even" ? 2 * random() - 1 : drawNormal(law.deviations, random) / law.deviations;
  return Math.min(value.high, Math.max(value.low, value.low + half + part * half));
}
