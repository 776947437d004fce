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

/** A quantity with its name: `Pin end float: 0.30 mm (0.24 to 0.36 mm)`; nothing when the build does not give it. */
export function said(nominals: Nominals, id: string): readonly string[] {
  const text = printed(nominals, id);
  return text === undefined ? [] : [`${quantities.get(id)!.name}: ${text}`];
}

/** A length of a picture [mm] for people: one decimal more where it is small. */
export function lengthText(mm: number): string {
  const decimals = Math.abs(mm) < 10 ? 2 : 1;
  return `${mm.toFixed(decimals)} mm`;
}
