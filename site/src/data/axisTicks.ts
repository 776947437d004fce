import { formatNumber, fromSi, unitOf } from "trialfit";

/** So many steps an axis has at most; with steps of 1, 2, 5 and 10 it then has two ticks at least. */
const MOST_STEPS = 5.3;

/** Two to six round values of an axis, in the unit in which it is read. */
export function axisTicks(
  from: number,
  to: number,
  symbol: string,
): readonly { readonly si: number; readonly text: string }[] {
  const unit = unitOf(symbol);
  const least = fromSi(from, unit);
  const most = fromSi(to, unit);
  const span = most - least;
  const power = 10 ** Math.floor(Math.log10(span / 3));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => span / one <= MOST_STEPS) ?? span;
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const ticks = [];
  for (let tick = Math.ceil(least / step) * step; tick <= most; tick += step) {
    const si = from + ((tick - least) / span) * (to - from);
    ticks.push({ si, text: formatNumber(si, symbol, { decimals }) });
  }
  return ticks;
}
