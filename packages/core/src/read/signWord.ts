import type { FieldSpec } from "./FieldSpec.ts";

/** The word that carries a sign of a dimension: `dish`, `below crank axis`; undefined where the sign is no word. */
export function signWord(spec: FieldSpec, sign: 1 | -1): string | undefined {
  const signs = spec.kind === "dimension" ? (spec.signs ?? {}) : {};
  return Object.entries(signs).find(([, way]) => way === sign)?.[0];
}
