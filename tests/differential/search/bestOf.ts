import type { Combination } from "./exhaust.ts";

export type Aim = "cost" | "margin" | "mass" | "time";
export type Weights = Readonly<Record<Aim, number>>;

/** Whether a combination may stay: no rule fails, and where that is demanded every one is known or surely holds. */
export function stays(one: Combination, demand: boolean | "known"): boolean {
  const { words, toConfirm, aimMissed, aimsKnown } = one;
  if (aimMissed || (demand !== false && !aimsKnown)) return false;
  if (demand === "known")
    return [...words].every(
      ([rule, word]) => word !== "fails" && (word !== "unknown" || toConfirm.has(rule)),
    );
  return [...words].every(
    ([rule, word]) =>
      word !== "fails" && (!demand || word === "holds" || word === "not-applicable" || toConfirm.has(rule)),
  );
}

/** The least margin of the rules that the choice has a say in; −∞ where there is none. */
function marginOf({ margins }: Combination, touched: ReadonlySet<string>): number {
  const known = [...margins].filter(([rule, margin]) => touched.has(rule) && !Number.isNaN(margin));
  const least = Math.min(Infinity, ...known.map(([, margin]) => margin));
  return least === Infinity ? -Infinity : least;
}

/** What a combination comes to by each aim, the smaller the better. */
export function worthOf(one: Combination, aim: Aim, touched: ReadonlySet<string>): number {
  return aim === "margin" ? -marginOf(one, touched) : one[aim];
}

export function scoreOf(one: Combination, weights: Weights, touched: ReadonlySet<string>): number {
  const added =
    (weights.cost === 0 ? 0 : weights.cost * one.cost) + (weights.mass === 0 ? 0 : weights.mass * one.mass);
  const rest = added + (weights.time === 0 ? 0 : weights.time * one.time);
  return weights.margin === 0 ? rest : rest - weights.margin * marginOf(one, touched);
}

/** @param order keys of the kinds, the one first that decides first among equals */
export const byIds = (order: readonly string[]) => (a: Combination, b: Combination) => {
  for (const key of order) {
    const [x, y] = [a.ids[key]!, b.ids[key]!];
    if (x !== y) return x < y ? -1 : 1;
  }
  return 0;
};

/** The front by comparing each with each. */
export function frontOf(
  all: readonly Combination[],
  aims: readonly Aim[],
  touched: ReadonlySet<string>,
  order: readonly string[],
): readonly Combination[] {
  const vectors = all.map((one) => aims.map((aim) => worthOf(one, aim, touched)));
  return all.filter((one, index) =>
    all.every((other, at) => {
      const [mine, theirs] = [vectors[index]!, vectors[at]!];
      const nowhereWorse = theirs.every((value, aim) => value <= mine[aim]!);
      const alike = theirs.every((value, aim) => value === mine[aim]!);
      return !nowhereWorse || (alike && byIds(order)(one, other) <= 0);
    }),
  );
}
