import {
  type DistanceToFixedObstacle,
  type RodNearest,
  type RodOutline,
  type SliderCrank,
  sweepOutline,
} from "@trialfit/mechanics";

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

/** An obstacle that stands still in the frame of each bank. */
export interface FixedObstacle extends RodObstacle {
  /** Its parts for a sweep, seen from banks that lean so far [rad]: from every bank when left out. */
  readonly metal: (
    numbers: Readonly<Record<string, number>>,
    tilts?: readonly number[],
  ) => readonly DistanceToFixedObstacle[];
}

/** Declares an obstacle that stands still and is nowhere hollow: the rod is swept past its metal. */
export function fixedObstacle(own: Omit<FixedObstacle, "nearest">): FixedObstacle {
  return {
    ...own,
    nearest: (n, rod) => sweepOutline({ ...rod, obstacle: own.metal(n), hollow: 0 }),
  };
}
