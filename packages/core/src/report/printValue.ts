import type { Derivation } from "../derive/Derivation.ts";
import type { Quantity } from "../derive/Quantity.ts";
import type { BandEnd } from "../judge/templateNames.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { formatNumber } from "../units/formatNumber.ts";

/** Two ends as people read them: `0.92 to 1.32 mm`, or one number where both print alike. */
export function printRange(
  { low, high }: { readonly low: number; readonly high: number },
  unit: string,
  decimals?: number,
): string {
  const style = decimals === undefined ? {} : { decimals };
  const [from, to] = [formatNumber(low, unit, style), formatNumber(high, unit, style)];
  return from === to ? to : `${from.replace(/ [^\d].*$/, "")} to ${to}`;
}

/** A band as people read it: `1.12 mm (0.92 to 1.32 mm)`; without the bracket where it prints as one number. */
export function printBand(
  band: { readonly low: number; readonly nominal: number; readonly high: number },
  unit: string,
  decimals?: number,
): string {
  const style = decimals === undefined ? {} : { decimals };
  const nominal = formatNumber(band.nominal, unit, style);
  return formatNumber(band.low, unit, style) === formatNumber(band.high, unit, style)
    ? nominal
    : `${nominal} (${printRange(band, unit, decimals)})`;
}

/** One end of a band is a bound to work to: it is rounded away from the band, so that keeping it keeps the band. */
const OUTWARD = { low: "down", high: "up" } as const;

/** A derived quantity with its band, or one end of it alone; undefined when it is not there. */
export function printDerivation(
  quantity: Quantity,
  derivation: Derivation,
  end: BandEnd,
): string | undefined {
  if (derivation.state !== "value") return undefined;
  if (end === undefined) return printBand(derivation, quantity.unit, quantity.decimals);
  return formatNumber(derivation[end], quantity.unit, {
    decimals: quantity.decimals,
    toward: OUTWARD[end],
  });
}

/** A field as it was written. */
export function printField(value: FieldValue): string {
  if (value.kind === "choice" || value.kind === "text") return value.value;
  return value.text.replace(/\s*±\s*0$/, "");
}
