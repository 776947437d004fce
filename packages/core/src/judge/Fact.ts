/** A number that is known to lie in a band. */
export interface BandFact {
  readonly kind: "band";
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
  /** Paths of missing inputs that widen this band (a limit whose case is not settled). */
  readonly missing: readonly string[];
}

export interface WordFact {
  readonly kind: "word";
  readonly word: string;
}

/** A fact that is not there, or cannot be computed. */
export interface MissingFact {
  readonly kind: "missing";
  /** Paths of the inputs that would give it. */
  readonly missing: readonly string[];
  /** Why it cannot be computed, when its inputs are there but cannot be. */
  readonly reason?: string;
}

export type Fact = BandFact | WordFact | MissingFact;

/** A number without any spread. */
export function exactly(value: number): BandFact {
  return { kind: "band", low: value, nominal: value, high: value, missing: [] };
}
