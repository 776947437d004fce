import { type Unit, type UnitDimensions, unitTable } from "./unitTable.ts";

const SUPERSCRIPTS: Readonly<Record<string, string>> = { "²": "2", "³": "3", "⁴": "4", "⁻": "-", "¹": "1" };

/** One spelling for what people write in several ways: superscripts, micro signs, dots and spaces. */
function normalise(text: string): string {
  return text
    .trim()
    .replace(/[²³⁴⁻¹]/g, (sign) => SUPERSCRIPTS[sign] ?? sign)
    .replace(/[µμ]/g, "u")
    .replace(/\^/g, "")
    .replace(/\s*[·⋅*]\s*/g, "*")
    .replace(/\s+/g, " ");
}

const bySpelling: ReadonlyMap<string, Unit> = new Map(
  unitTable.flatMap((unit) =>
    [unit.symbol, ...unit.aliases].map((spelling) => [normalise(spelling), unit] as const),
  ),
);

/** The unit that a spelling stands for, or undefined. Case matters: `mm` and `Mm` are not the same. */
export function findUnit(spelling: string): Unit | undefined {
  return bySpelling.get(spelling) ?? bySpelling.get(normalise(spelling));
}

/** The unit of the table with this symbol. @throws RangeError when the table has none: a slip in a declaration. */
export function unitOf(symbol: string): Unit {
  const unit = findUnit(symbol);
  if (unit === undefined) throw new RangeError(`no unit "${symbol}" in the unit table`);
  return unit;
}

export function sameDimensions(a: UnitDimensions, b: UnitDimensions): boolean {
  return a.every((power, index) => power === b[index]);
}

/** Every unit that can express what this one expresses, for "expected one of" messages and unit menus. */
export function unitsLike(unit: Unit): readonly Unit[] {
  return unitTable.filter((other) => sameDimensions(other.dimensions, unit.dimensions));
}
