import { fromSi, intervalFromSi } from "./convert.ts";
import { unitOf } from "./findUnit.ts";

export interface NumberStyle {
  /** Significant digits; 4 unless given. */
  readonly digits?: number;
  /** Least step that matters, in the printed unit, for fixed decimals instead of significant digits. */
  readonly decimals?: number;
}

function print(value: number, style: NumberStyle): string {
  if (!Number.isFinite(value)) return value > 0 ? "unbounded" : value < 0 ? "-unbounded" : "not a number";
  const rounded =
    style.decimals === undefined
      ? Number(value.toPrecision(style.digits ?? 4))
      : Number(value.toFixed(style.decimals));
  const text =
    style.decimals === undefined || Math.abs(rounded) >= 1e15
      ? String(rounded)
      : rounded.toFixed(style.decimals);
  return Object.is(rounded, -0) ? text.replace("-", "") : text;
}

/** Prints an SI value in a unit: `formatNumber(0.0885, "mm")` is `88.5 mm`. A plain ratio has no unit. */
export function formatNumber(si: number, symbol: string, style: NumberStyle = {}): string {
  const unit = unitOf(symbol);
  const number = print(fromSi(si, unit), style);
  return unit.symbol === "1" ? number : `${number} ${unit.symbol}`;
}

/** Prints an SI difference in a unit; the zero mark of a temperature scale plays no part. */
export function formatInterval(si: number, symbol: string, style: NumberStyle = {}): string {
  const unit = unitOf(symbol);
  const number = print(intervalFromSi(si, unit), style);
  return unit.symbol === "1" ? number : `${number} ${unit.symbol}`;
}
