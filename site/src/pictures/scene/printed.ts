import { formatNumber, type Nominals, printBand, quantities } from "trialfit";

/** A value with what the tolerances make of it [SI]. */
export interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** Bands that were searched before, by the id of their quantity. */
export type KnownBands = (id: string) => Band | undefined;

/**
 * A quantity with its band as people read it; undefined when the build does not give it. A band that takes long to
 * search is said only when it is known: else it is said that the value is that of the nominal sizes.
 */
export function printed(nominals: Nominals, id: string, known?: KnownBands): string | undefined {
  const quantity = quantities.get(id)!;
  const { unit, decimals, nominalOnly, shape } = quantity;
  if (nominals.lacking(id).length > 0) return undefined;
  if (nominalOnly || shape === "guarded") {
    const band = nominalOnly ? undefined : known?.(id);
    if (band !== undefined) return printBand(band, unit, decimals);
    const value = nominals.size(id);
    if (value === undefined) return undefined;
    const text = formatNumber(value, unit, { decimals });
    return nominalOnly ? text : `${text} at the nominal sizes`;
  }
  const band = nominals.band(id);
  return band && printBand(band, unit, decimals);
}
