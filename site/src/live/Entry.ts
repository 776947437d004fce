/** What stands in the controls of one field. */
export interface Entry {
  readonly value: string;
  readonly unit?: string | undefined;
  readonly word?: string | undefined;
  readonly tolerance?: string | undefined;
}

/** The entry as a build file has it, `13.8 cm3 dish ± 0.3`; undefined where nothing is entered. */
export function writeEntry({ value, unit = "", word = "", tolerance = "" }: Entry): string | undefined {
  if (value.trim() === "") return undefined;
  const bare = tolerance.trim();
  const band = bare === "" ? "" : /^[+±-]/.test(bare) ? bare : `± ${bare}`;
  return [value.trim(), unit === "1" ? "" : unit, word, band].filter((piece) => piece !== "").join(" ");
}

/** Zero mark and step of a unit in SI. */
export interface Scale {
  readonly zero: number;
  readonly step: number;
}

/** A number as people write it, `3/8` too; not a number where it is none. */
export function readNumber(text: string): number {
  const fraction = /^\s*(?:(\d+)\s+)?(\d+)\s*\/\s*(\d+)\s*$/.exec(text);
  if (fraction !== null) return Number(fraction[1] ?? 0) + Number(fraction[2]) / Number(fraction[3]);
  return text.trim() === "" ? Number.NaN : Number(text);
}

/** The same size in another unit, to six digits; a text that is no number stays as it is. @param interval for tolerances */
export function rewrite(text: string, from: Scale, to: Scale, interval = false): string {
  const number = readNumber(text);
  if (!Number.isFinite(number)) return text;
  const si = number * from.step + (interval ? 0 : from.zero);
  return String(Number(((si - (interval ? 0 : to.zero)) / to.step).toPrecision(6)));
}
