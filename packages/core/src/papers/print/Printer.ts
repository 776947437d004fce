import { quantities } from "../../derive/generated/quantities.ts";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { signWord } from "../../read/signWord.ts";
import { printField } from "../../report/printValue.ts";
import { fromSi, intervalFromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { formatInterval, formatNumber } from "../../units/formatNumber.ts";
import type { Cell, NumberPiece } from "../Paper.ts";
import { type UnitChoice, unitsFor } from "./paperUnits.ts";

/** Figures after the point that a number keeps when it is written as it stands. */
function decimalsOf(text: string): number {
  return /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
}

/** A fraction of an inch or a pitch: `7/16 in`, `1/20 in`. */
const FRACTION = /\d\/\d/;
/** Part of a number that may be lost when a fraction is printed with decimals. */
const LOST = 1e-5;
/** Part of a size beyond which decimals lose too much of it: an expansion in 1/K. */
const TOO_MUCH = 4e-3;

/** Decimals that print a number as it is, or nearly. */
function decimalsFor(number: number): number {
  const most = [0, 1, 2, 3, 4, 5];
  return most.find((one) => Math.abs(Number(number.toFixed(one)) - number) <= LOST * Math.abs(number)) ?? 6;
}

/** A size as it is shown: without its sign and with the word for it, where the dimension has words for signs. */
function signedSize(path: string, value: number): { readonly word: string; readonly shown: number } {
  const spec = fields.get(path)?.spec;
  if (spec?.kind !== "dimension" || spec.signs === undefined) return { word: "", shown: value };
  const word = value === 0 ? undefined : signWord(spec, value < 0 ? -1 : 1);
  return { word: word === undefined ? "" : ` ${word}`, shown: Math.abs(value) };
}

/** Decimals in another unit that lose nothing: a step there is no larger than a step here. */
export function decimalsIn(from: string, to: string, decimals: number): number {
  const step = intervalFromSi(1, unitOf(to)) / intervalFromSi(1, unitOf(from));
  return Math.max(0, Math.ceil(decimals - Math.log10(step) - 1e-9));
}

/** Prints numbers for paper, each with where it comes from. */
export class Printer {
  private readonly choice: UnitChoice;
  private readonly values: ReadonlyMap<string, FieldValue>;

  constructor(choice: UnitChoice, values: ReadonlyMap<string, FieldValue>) {
    this.choice = choice;
    this.values = values;
  }

  /** The units in which a dimension of this unit is printed. */
  units(unit: string): readonly string[] {
    return unitsFor(this.choice, unit);
  }

  /** A number [SI] that is usually shown with so many decimals of a unit. */
  number(of: string, value: number, unit: string, decimals: number): NumberPiece {
    const texts = this.units(unit).map((to) =>
      formatNumber(value, to, { decimals: decimalsIn(unit, to, decimals) }),
    );
    return { kind: "number", of, value, text: texts.join(" / ") };
  }

  /** A number [SI] with four figures: a limit, a size whose fineness is not stated. */
  figure(of: string, value: number, unit: string): NumberPiece {
    const texts = this.units(unit).map((to) => formatNumber(value, to, { digits: to === unit ? 4 : 5 }));
    return { kind: "number", of, value, text: texts.join(" / ") };
  }

  /** A difference [SI] with two figures: how well something must be known. */
  difference(of: string, value: number, unit: string): NumberPiece {
    const texts = this.units(unit).map((to) => formatInterval(value, to, { digits: 2 }));
    return { kind: "number", of, value, text: texts.join(" / ") };
  }

  /** A difference [SI]: a tolerance, an uncertainty. */
  interval(of: string, value: number, unit: string, decimals: number): NumberPiece {
    const texts = this.units(unit).map((to) =>
      formatInterval(value, to, { decimals: decimalsIn(unit, to, decimals) }),
    );
    return { kind: "number", of, value, text: texts.join(" / ") };
  }

  /** A size that a dimension may have [SI], in one unit: its sign as a word, where it has one. */
  sizeText(path: string, value: number, unit: string, decimals: number): string {
    const { word, shown } = signedSize(path, value);
    return formatNumber(shown, unit, { decimals }).replace(/ .*$/, "") + word;
  }

  /** The same with its unit, in every unit that is asked for. */
  size(of: string, path: string, value: number, unit: string, decimals: number): NumberPiece {
    const { word, shown } = signedSize(path, value);
    const texts = this.units(unit).map((to) => {
      const own = decimalsIn(unit, to, decimals);
      const there = fromSi(shown, unitOf(to));
      const loses = Math.abs(Number(there.toFixed(own)) - there) > TOO_MUCH * Math.abs(there);
      return formatNumber(shown, to, loses ? { digits: 5 } : { decimals: own });
    });
    return { kind: "number", of, value, text: `${texts.join(" / ")}${word}` };
  }

  /** One end or the nominal value of a dimension, as finely as its tolerance is written. */
  end(path: string, value: DimensionValue, which: "low" | "nominal" | "high"): NumberPiece {
    return this.size(path, path, value[which], value.unit, this.fineness(value));
  }

  /** Decimals in the unit of a dimension that show its band. */
  fineness(value: DimensionValue): number {
    const unit = unitOf(value.unit);
    const half = Math.abs(intervalFromSi((value.high - value.low) / 2, unit));
    const band = half > 0 ? Math.ceil(-Math.log10(half) + 0.5) : 0;
    const numbers = value.text.match(/\d+(\.\d+)?/g) ?? [];
    const written = Math.max(0, ...numbers.map(decimalsOf));
    const own = FRACTION.test(value.text) ? decimalsFor(fromSi(value.nominal, unitOf(value.unit))) : 0;
    return Math.min(6, Math.max(written, band, own));
  }

  /** A field of the build as it is: size with its band, a word, or a table in short. */
  field(path: string): Cell {
    const value = this.values.get(path);
    if (value === undefined) return [];
    if (value.kind !== "dimension") return [printField(value)];
    if (this.choice === "written" && value.positions === undefined)
      return [{ kind: "number", of: path, value: value.nominal, text: printField(value) }];
    return this.banded(path, value);
  }

  /** A dimension with its band: `88.50 mm ± 0.01 mm`, or from … to … where it is not even. */
  banded(path: string, value: DimensionValue): Cell {
    const decimals = this.fineness(value);
    const { low, nominal, high } = value;
    const size = this.end(path, value, "nominal");
    const place = this.values.get(`${path}.place`);
    const where = place?.kind === "choice" ? [` ${place.value}`] : [];
    if (low === high) return [size, ...where];
    const even = Math.abs(high - nominal - (nominal - low)) < 1e-9 * Math.max(high - low, 1e-12);
    return even
      ? [size, " ± ", this.interval(path, high - nominal, value.unit, decimals), ...where]
      : [size, " (", this.end(path, value, "low"), " to ", this.end(path, value, "high"), ")", ...where];
  }

  /** A derived quantity with its band. */
  quantity(
    id: string,
    band: { readonly low: number; readonly nominal: number; readonly high: number },
  ): Cell {
    const { unit, decimals } = quantities.get(id)!;
    const [low, nominal, high] = [band.low, band.nominal, band.high].map((value) =>
      this.number(id, value, unit, decimals),
    );
    if (low!.text === high!.text) return [nominal!];
    return [nominal!, " (", low!, " to ", high!, ")"];
  }
}
