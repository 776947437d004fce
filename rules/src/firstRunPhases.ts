/** The parts of a first run, in their order, and how each is headed on paper. */
export const firstRunPhases = {
  before: "Before the engine is first started",
  during: "From the first firing on",
  after: "Afterwards, and at the hand-over",
} as const;
export type FirstRunPhase = keyof typeof firstRunPhases;
