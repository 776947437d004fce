/** Kinds of work that a finding can ask for. */
export const works = {
  order: "order another or an extra part",
  machine: "machine a part",
  measure: "measure before going on",
  assemble: "assemble with care",
  operate: "operate within a limit",
} as const;
export type Work = keyof typeof works;
