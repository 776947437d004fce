import type { RodNearest, RodOutline, SliderCrank } from "@trialfit/mechanics";

/** The rod as a sweep against any obstacle takes it. */
export interface SweptRod {
  readonly crank: SliderCrank;
  readonly outline: RodOutline;
}

/** Something that a rod can strike: what it takes to place it, and how near the rod comes. */
export interface RodObstacle {
  /** As it stands in a sentence. */
  readonly words: string;
  /** Name in the computation → field path or quantity, beside what the rod itself needs. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly nearest: (numbers: Readonly<Record<string, number>>, rod: SweptRod) => RodNearest;
  /** How it is swept, and where that may be trusted. */
  readonly method: string;
  readonly valid: string;
  /** Invented sizes for examples. */
  readonly given: Readonly<Record<string, string>>;
}
