import { formatNumber, type Nominals, printBand, quantities } from "trialfit";

/** A quantity with its band as people read it; undefined when the build does not give it. */
export function printed(nominals: Nominals, id: string): string | undefined {
  const quantity = quantities.get(id)!;
  if (nominals.lacking(id).length > 0) return undefined;
  if (quantity.nominalOnly || quantity.shape === "guarded") {
    const value = nominals.size(id);
    return value === undefined
      ? undefined
      : formatNumber(value, quantity.unit, { decimals: quantity.decimals });
  }
  const band = nominals.band(id);
  return band && printBand(band, quantity.unit, quantity.decimals);
}
