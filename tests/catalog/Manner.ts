import type { Random } from "../../packages/core/src/derive/seeded.ts";

/** How far a build strays from the one that it is drawn from; all but the size are shares from 0 to 1. */
export interface Manner {
  /** Factor on every length; the rest follows by similarity: stress and speed × length stay as they were. */
  readonly size: number;
  /** Share of the numbers that are moved. */
  readonly moved: number;
  /** Share of the words and counts that are drawn anew. */
  readonly reworded: number;
  /** Share of the numbers that are replaced by one that rules or quantities name in their examples. */
  readonly replaced: number;
  /** Share of the fields that are left out. */
  readonly left: number;
  /** Share of the fields that the build does not give and that are added. */
  readonly added: number;
  /** Share of the rules whose examples are taken into the build. */
  readonly closer: number;
}

/** Some builds stay near what they are drawn from, others go far: in each way by itself. */
export function drawManner(random: Random): Manner {
  return {
    size: random() < 0.6 ? 1 : 2 ** (2 * random() - 1),
    moved: random(),
    reworded: 0.6 * random(),
    replaced: 0.3 * random() ** 2,
    left: 0.3 * random() ** 3,
    added: random(),
    closer: 0.1 * random(),
  };
}
