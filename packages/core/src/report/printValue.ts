import type { Derivation } from "../derive/Derivation.ts";
import type { Quantity } from "../derive/Quantity.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { formatNumber } from "../units/formatNumber.ts";

/** A band as people read it: `1.12 mm (0.92 to 1.32 mm)`; without the bracket where it prints as one number. */
export function printBand(
  band: { readonly low: number; readonly nominal: number; readonly high: number },
  unit: string,
  decimals?: number,
): string {
  const style = decimals === undefined ? {} : { decimals };
  const [low, nominal, high] = [band.low, band.nominal, band.high].map((value) =>
    formatNumber(value, unit, style),
  ) as [string, string, string];
  return low === high ? nominal : `${nominal} (${low.replace(/ [^\d].*$/, "")} to ${high})`;
}

/** A derived quantity with its band, or an ellipsis with what it needs. */
export function printDerivation(quantity: Quantity, derivation: Derivation): string {
  return derivation.state === "value" ? printBand(derivation, quantity.unit, quantity.decimals) : "…";
}

/** A field as it was written, or an ellipsis. */
export function printField(value: FieldValue | undefined): string {
  if (value === undefined) return "…";
  if (value.kind === "choice" || value.kind === "text") return value.value;
  return value.text.replace(/\s*±\s*0$/, "");
}
