import { fromSi, intervalFromSi } from "./convert.ts";
import { unitOf } from "./findUnit.ts";

export interface NumberStyle {
  /** Significant digits; 4 unless given. */
  readonly digits?: number;
  /** Least step that matters, in the printed unit, for fixed decimals instead of significant digits. */
  readonly decimals?: number;
  /** Which way a number is rounded to these decimals; to the nearest unless given. */
  readonly toward?: "up" | "down";
}

/** Share of the last decimal that is taken for an error of computing, not for more or less than the decimal. */
const NOISE = 1e-6;

/** A value at fixed decimals. */
function rounded(value: number, decimals: number, toward: NumberStyle["toward"]): number {
  if (toward === undefined) return Number(value.toFixed(decimals));
  const scale = 10 ** decimals;
  const steps = toward === "up" ? Math.ceil(value * scale - NOISE) : Math.floor(value * scale + NOISE);
  return steps / scale;
}

function print(value: number, style: NumberStyle): string {
  if (!Number.isFinite(value)) return value > 0 ? "unbounded" : value < 0 ? "-unbounded" : "not a number";
  const { digits = 4, decimals, toward } = style;
  const shown = decimals === undefined ? Number(value.toPrecision(digits)) : rounded(value, decimals, toward);
  const text = decimals === undefined || Math.abs(shown) >= 1e15 ? String(shown) : shown.toFixed(decimals);
  return Object.is(shown, -0) ? text.replace("-", "") : text;
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
