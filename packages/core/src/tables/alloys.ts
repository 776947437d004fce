import type { StrengthId } from "./strengths.ts";

/** Alloys of connecting rods: word of the build file → alloy of the table of strengths. */
export const rodAlloys = {
  "forged-steel": "forged-steel",
  "quenched-steel": "quenched-steel",
  "powder-steel": "powder-steel",
  "ductile-iron": "ductile-iron",
  "titanium-6al-4v": "titanium-6al-4v",
  "7075": "aluminium-7075",
  "2618": "aluminium-2618",
} as const satisfies Readonly<Record<string, StrengthId>>;

/** Alloys of pistons. */
export const pistonAlloys = {
  "2618": "aluminium-2618",
  "4032": "aluminium-4032",
  hypereutectic: "cast-hypereutectic-aluminium",
  eutectic: "cast-eutectic-aluminium",
} as const satisfies Readonly<Record<string, StrengthId>>;

/** Steels of piston pins. */
export const pinSteels = {
  "case-hardened": "case-hardened-steel",
  "hot-work": "hot-work-steel",
} as const satisfies Readonly<Record<string, StrengthId>>;

/** Metals of fasteners. */
export const fastenerMetals = {
  steel: "quenched-steel",
  austenitic: "austenitic-bolt-steel",
  titanium: "titanium-6al-4v",
} as const satisfies Readonly<Record<string, StrengthId>>;
