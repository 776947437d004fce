/** What one combination comes to: smaller is better but for the margin. */
export interface Totals {
  /** In ten-thousandths of the currency. */
  readonly cost: number;
  /** Of all chosen parts [kg]. */
  readonly mass: number;
  /** Until the last of them is there [s]. */
  readonly time: number;
  /**
   * Least relative margin (`relativeMargin`) of the stop rules on which the choice has a say; undefined where none of
   * them gives a number.
   */
  readonly margin: number | undefined;
}

/** What combinations are compared by. */
export const aims = {
  cost: "the sum of all prices",
  margin:
    "the margin of the stop rule that is nearest to its limit, the greater the better: of those on which the choice has a say, over all tolerances",
  mass: "the sum of all masses",
  time: "the longest lead time: when the last part is there",
} as const;
export type Aim = keyof typeof aims;
export const aimNames = Object.keys(aims) as readonly Aim[];

/** How much each aim counts: per ten-thousandth of the currency, kg, s, and whole relative margin. At least one counts. */
export type Weights = Readonly<Record<Aim, number>>;

/** One aim alone. */
export function weightsOf(aim: Aim): Weights {
  return { cost: 0, margin: 0, mass: 0, time: 0, [aim]: 1 };
}

/** What a part adds to the aims that are sums. */
export function addedScore({ cost, mass }: Weights, part: Pick<Totals, "cost" | "mass">): number {
  return (cost === 0 ? 0 : cost * part.cost) + (mass === 0 ? 0 : mass * part.mass);
}

/** One number for a combination, the smaller the better; one without a margin comes last where the margin counts. */
export function scoreOf(weights: Weights, totals: Totals): number {
  const { time, margin } = weights;
  const rest = addedScore(weights, totals) + (time === 0 ? 0 : time * totals.time);
  return margin === 0 ? rest : rest - margin * (totals.margin ?? -Infinity);
}

/** What a combination is worth in each of some aims, the smaller the better. */
export function vectorOf(names: readonly Aim[], totals: Totals): readonly number[] {
  return names.map((name) => (name === "margin" ? -(totals.margin ?? -Infinity) : totals[name]));
}

/** Whether one vector is nowhere worse than another. */
export function coversAll(one: readonly number[], other: readonly number[]): boolean {
  return one.every((value, index) => value <= other[index]!);
}
