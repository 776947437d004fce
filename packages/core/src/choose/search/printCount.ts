/** Combinations up to which all digits are printed. */
const EXACT = 1e12;

/** A number of combinations for people: `1,073,741,824 combinations`, `1.3 × 10^23 combinations`. */
export function printCount(count: number): string {
  const digits =
    count < EXACT
      ? String(Math.round(count)).replace(/\B(?=(\d{3})+$)/g, ",")
      : count.toExponential(1).replace(/e\+?/, " × 10^");
  return `${digits} combination${count === 1 ? "" : "s"}`;
}
