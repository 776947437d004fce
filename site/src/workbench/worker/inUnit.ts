import { type DimensionPieces, fromSi, joinDimension, parseDimension, unitOf } from "trialfit";

const DIGITS = 9;
const short = (value: number) => String(Number(value.toPrecision(DIGITS)));

/** The same dimension in another unit; its tolerance too, unless it is a share. Without a number only the unit changes. */
export function inUnit(pieces: DimensionPieces, symbol: string): DimensionPieces {
  if (pieces.number.trim() === "") return { ...pieces, unit: symbol };
  const unit = unitOf(symbol);
  const { nominal, minus, plus } = parseDimension(joinDimension({ ...pieces, word: "" }), { unit: symbol });
  const at = fromSi(nominal, unit);
  const width = (size: number) => short(Math.abs(fromSi(nominal + size, unit) - at));
  const tolerance =
    minus === undefined || plus === undefined || /%\s*$/.test(pieces.tolerance)
      ? pieces.tolerance
      : width(minus) === width(plus)
        ? width(plus)
        : `+${width(plus)}/-${width(-minus)}`;
  return { ...pieces, number: short(at), unit: symbol, tolerance };
}
