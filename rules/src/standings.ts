/** How well founded a limit is, best first. */
export const standings = {
  standard: "laid down in a standard",
  handbook: "printed in a handbook or textbook",
  derivation: "follows from geometry or from the meaning of the words",
  "common-practice": "what careful builders do; no single source, shops differ",
  "from-memory": "recalled, not checked against a source: treat as a starting value",
} as const;
export type Standing = keyof typeof standings;
