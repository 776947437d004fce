import { type Rational, rational, rationalFromDecimal } from "./Rational.ts";

/**
 * Powers of length, mass, time, temperature and angle. Angle is kept apart so that a speed of rotation is
 * never taken for a frequency at the edge; formulae drop it (a radian is a ratio of lengths).
 */
export type UnitDimensions = readonly [
  length: number,
  mass: number,
  time: number,
  temperature: number,
  angle: number,
];

export interface Unit {
  /** The spelling that is printed. */
  readonly symbol: string;
  /** Other spellings that are read. */
  readonly aliases: readonly string[];
  readonly dimensions: UnitDimensions;
  /** One of this unit in SI, without its factor of pi. */
  readonly factor: Rational;
  /** Power of pi in the factor: 1 for degrees and revolutions. */
  readonly pi: 0 | 1;
  /** SI value of the zero mark: 273.15 K for the Celsius scale. */
  readonly offset: Rational;
  /** What the unit counts, in words. */
  readonly name: string;
}

const ZERO = rational(0n);

function exact(text: string): Rational {
  const [top = "", bottom = "1"] = text.split("/");
  const numerator = rationalFromDecimal(top);
  const denominator = rationalFromDecimal(bottom);
  if (numerator === undefined || denominator === undefined) throw new RangeError(`not a fraction: ${text}`);
  return rational(
    numerator.numerator * denominator.denominator,
    numerator.denominator * denominator.numerator,
  );
}

type Row = readonly [symbol: string, aliases: string, factor: string, name: string];

function rows(dimensions: UnitDimensions, table: readonly Row[], pi: 0 | 1 = 0): Unit[] {
  return table.map(([symbol, aliases, factor, name]) => ({
    symbol,
    aliases: aliases === "" ? [] : aliases.split("|"),
    dimensions,
    factor: exact(factor),
    pi,
    offset: ZERO,
    name,
  }));
}

const LENGTH: UnitDimensions = [1, 0, 0, 0, 0];
const FORCE: UnitDimensions = [1, 1, -2, 0, 0];
const TORQUE: UnitDimensions = [2, 1, -2, 0, 0];
const PRESSURE: UnitDimensions = [-1, 1, -2, 0, 0];
const POWER: UnitDimensions = [2, 1, -3, 0, 0];
const TEMPERATURE: UnitDimensions = [0, 0, 0, 1, 0];
const ROTATION: UnitDimensions = [0, 0, -1, 0, 1];

/**
 * Every unit that trialfit reads or prints. Inch, pound, standard gravity, horsepower, bar and the Celsius
 * and Fahrenheit scales are exact by definition.
 * Source: NIST SP 811 (2008), appendix B.8, and the exact definitions behind it.
 */
export const unitTable: readonly Unit[] = [
  ...rows(LENGTH, [
    ["m", "metre|meter", "1", "metre"],
    ["mm", "", "0.001", "millimetre"],
    ["cm", "", "0.01", "centimetre"],
    ["um", "µm|micron", "0.000001", "micrometre"],
    ["in", 'inch|inches|in.|"|″', "0.0254", "inch"],
    ["thou", "", "0.0000254", "thousandth of an inch"],
    ["ft", "foot|feet", "0.3048", "foot"],
  ]),
  ...rows(
    [2, 0, 0, 0, 0],
    [
      ["m2", "", "1", "square metre"],
      ["cm2", "", "0.0001", "square centimetre"],
      ["mm2", "", "0.000001", "square millimetre"],
      ["in2", "sq in", "0.00064516", "square inch"],
    ],
  ),
  ...rows(
    [3, 0, 0, 0, 0],
    [
      ["m3", "", "1", "cubic metre"],
      ["cm3", "cc|mL|ml", "0.000001", "cubic centimetre"],
      ["mm3", "", "0.000000001", "cubic millimetre"],
      ["L", "l|litre|liter", "0.001", "litre"],
      ["in3", "cu in", "0.000016387064", "cubic inch"],
    ],
  ),
  ...rows(
    [4, 0, 0, 0, 0],
    [
      ["m4", "", "1", "metre to the fourth"],
      ["mm4", "", "1e-12", "millimetre to the fourth"],
      ["in4", "", "4.162314256e-7", "inch to the fourth"],
    ],
  ),
  ...rows(
    [0, 1, 0, 0, 0],
    [
      ["kg", "", "1", "kilogram"],
      ["g", "", "0.001", "gram"],
      ["lb", "lbs|lbm", "0.45359237", "pound"],
      ["oz", "", "0.028349523125", "ounce"],
    ],
  ),
  ...rows(FORCE, [
    ["N", "", "1", "newton"],
    ["kN", "", "1000", "kilonewton"],
    ["lbf", "", "4.4482216152605", "pound-force"],
    ["kgf", "", "9.80665", "kilogram-force"],
  ]),
  ...rows(TORQUE, [
    ["N m", "Nm|N*m", "1", "newton metre"],
    [
      "lbf ft",
      "lbf*ft|lbf-ft|ft lbf|ft*lbf|ft-lbf|lb ft|lb-ft|ft lb|ft-lb|ft-lbs|ft lbs",
      "1.3558179483314004",
      "pound-force foot",
    ],
    [
      "lbf in",
      "lbf*in|lbf-in|in lbf|in*lbf|in-lbf|lb in|in lb|in-lb|in-lbs",
      "0.1129848290276167",
      "pound-force inch",
    ],
    ["kgf m", "kgf*m", "9.80665", "kilogram-force metre"],
  ]),
  ...rows(TORQUE, [
    ["J", "", "1", "joule"],
    ["kJ", "", "1000", "kilojoule"],
  ]),
  ...rows([2, 1, -2, 0, -1], [["N m/rad", "Nm/rad", "1", "newton metre per radian"]]),
  ...rows(
    [1, 0, 0, 0, -1],
    [
      ["m/rad", "", "1", "metre per radian"],
      ["mm/rad", "", "0.001", "millimetre per radian"],
    ],
  ),
  ...rows(
    [1, 0, 0, 0, -2],
    [
      ["m/rad2", "", "1", "metre per radian squared"],
      ["mm/rad2", "", "0.001", "millimetre per radian squared"],
    ],
  ),
  ...rows(
    [0, -1, 2, 0, 0],
    [
      ["mm/kN", "", "0.000001", "millimetre per kilonewton"],
      ["m/N", "", "1", "metre per newton"],
    ],
  ),
  ...rows(
    [0, 0, -1, 0, 0],
    [
      ["Hz", "", "1", "hertz"],
      ["1/s", "", "1", "per second"],
    ],
  ),
  ...rows(
    [-1, 1, -3, 0, 0],
    [
      ["W/m3", "", "1", "watt per cubic metre"],
      ["kW/L", "", "1000000", "kilowatt per litre"],
    ],
  ),
  ...rows([2, 0, -2, -1, 0], [["J/(kg K)", "J/kg/K", "1", "joule per kilogram and kelvin"]]),
  ...rows([2, 1, -3, -1, 0], [["W/K", "", "1", "watt per kelvin"]]),
  ...rows([0, 1, -3, -1, 0], [["W/(m2 K)", "W/m2/K", "1", "watt per square metre and kelvin"]]),
  ...rows(PRESSURE, [
    ["Pa", "", "1", "pascal"],
    ["kPa", "", "1000", "kilopascal"],
    ["MPa", "N/mm2", "1000000", "megapascal"],
    ["GPa", "", "1000000000", "gigapascal"],
    ["bar", "", "100000", "bar"],
    ["mbar", "hPa", "100", "millibar"],
    ["atm", "", "101325", "standard atmosphere"],
    // Conventional mercury, 13 595.1 kg/m3, under standard gravity (NIST SP 811: 3.386 389 E+03 Pa).
    ["inHg", "", "3386.388640341", "inch of mercury"],
    ["psi", "lbf/in2", "4.4482216152605/0.00064516", "pound-force per square inch"],
    ["ksi", "kpsi", "4448.2216152605/0.00064516", "thousand pound-force per square inch"],
    // Vickers hardness is force over area in kgf/mm2 by its definition (ISO 6507-1).
    ["HV", "", "9806650", "Vickers hardness"],
  ]),
  ...rows(POWER, [
    ["W", "", "1", "watt"],
    ["kW", "", "1000", "kilowatt"],
    ["hp", "bhp", "745.69987158227022", "mechanical horsepower"],
    ["PS", "metric hp", "735.49875", "metric horsepower"],
  ]),
  ...rows(
    [1, 0, -1, 0, 0],
    [
      ["m/s", "", "1", "metre per second"],
      ["mm/s", "", "0.001", "millimetre per second"],
      ["ft/min", "", "0.3048/60", "foot per minute"],
      ["ft/s", "", "0.3048", "foot per second"],
    ],
  ),
  ...rows([1, 0, -2, 0, 0], [["m/s2", "", "1", "metre per second squared"]]),
  ...rows([2, 0, -2, 0, 0], [["m2/s2", "", "1", "square metre per second squared"]]),
  ...rows(ROTATION, [["rad/s", "", "1", "radian per second"]]),
  ...rows(ROTATION, [["rpm", "1/min|r/min|rev/min", "1/30", "revolution per minute"]], 1),
  ...rows([0, 0, 0, 0, 1], [["rad", "", "1", "radian"]]),
  ...rows([0, 0, 0, 0, 1], [["deg", "°", "1/180", "degree of angle"]], 1),
  ...rows(
    [0, 0, 1, 0, 0],
    [
      ["s", "", "1", "second"],
      ["ms", "", "0.001", "millisecond"],
      ["min", "", "60", "minute"],
      ["h", "", "3600", "hour"],
      // Accepted beside the SI (SI Brochure, 9th edition, table 8); seven of them make a week (ISO 8601).
      ["d", "day|days", "86400", "day"],
      ["wk", "week|weeks", "604800", "week"],
    ],
  ),
  ...rows(TEMPERATURE, [["K", "", "1", "kelvin"]]),
  { ...rows(TEMPERATURE, [["degC", "°C", "1", "degree Celsius"]])[0]!, offset: exact("273.15") },
  { ...rows(TEMPERATURE, [["degF", "°F", "5/9", "degree Fahrenheit"]])[0]!, offset: exact("2298.35/9") },
  ...rows(
    [0, 0, 0, -1, 0],
    [
      ["1/K", "", "1", "per kelvin"],
      ["um/(m K)", "um/m/K|1e-6/K", "0.000001", "micrometre per metre and kelvin"],
    ],
  ),
  ...rows(
    [0, 1, -2, 0, 0],
    [
      ["N/mm", "", "1000", "newton per millimetre"],
      ["N/m", "", "1", "newton per metre"],
      ["lbf/in", "", "4.4482216152605/0.0254", "pound-force per inch"],
    ],
  ),
  ...rows(
    [0, 1, -1, 0, 0],
    [
      ["kg/s", "", "1", "kilogram per second"],
      ["g/s", "", "0.001", "gram per second"],
      ["kg/h", "", "1/3600", "kilogram per hour"],
      ["lb/min", "", "0.45359237/60", "pound per minute"],
      ["lb/h", "", "0.45359237/3600", "pound per hour"],
    ],
  ),
  ...rows(
    [3, 0, -1, 0, 0],
    [
      ["m3/s", "", "1", "cubic metre per second"],
      ["L/min", "l/min", "0.001/60", "litre per minute"],
      ["L/h", "l/h", "0.001/3600", "litre per hour"],
      ["m3/h", "", "1/3600", "cubic metre per hour"],
      ["cm3/min", "cc/min", "0.000001/60", "cubic centimetre per minute"],
      ["ft3/min", "", "0.028316846592/60", "cubic foot per minute"],
    ],
  ),
  ...rows(
    [-2, 0, 2, 0, 0],
    [
      ["kg/J", "", "1", "kilogram per joule"],
      ["g/kWh", "g/(kW h)", "1/3600000000", "gram per kilowatt hour"],
      ["lb/(hp h)", "lb/hp/h", "0.45359237/2684519.537696172792", "pound per horsepower hour"],
    ],
  ),
  ...rows(
    [0, -1, 3, 0, 0],
    [
      ["mm2/kW", "", "1e-9", "square millimetre per kilowatt"],
      ["m2/W", "", "1", "square metre per watt"],
    ],
  ),
  ...rows(
    [2, 0, -2, 0, 0],
    [
      ["MJ/kg", "", "1000000", "megajoule per kilogram"],
      ["J/kg", "", "1", "joule per kilogram"],
    ],
  ),
  ...rows([-3, 1, 0, 0, 0], [["kg/m3", "", "1", "kilogram per cubic metre"]]),
  ...rows(
    [-1, 1, -1, 0, 0],
    [
      ["Pa s", "Pa*s", "1", "pascal second"],
      ["mPa s", "mPa*s|cP", "0.001", "millipascal second"],
    ],
  ),
  ...rows([2, 1, 0, 0, 0], [["kg m2", "kg*m2", "1", "kilogram square metre"]]),
  ...rows(
    [1, 1, 0, 0, 0],
    [
      ["g mm", "g*mm", "0.000001", "gram millimetre"],
      ["kg m", "", "1", "kilogram metre"],
    ],
  ),
  ...rows(
    [0, 0, 0, 0, 0],
    [
      ["1", "", "1", "plain number"],
      ["%", "percent", "0.01", "per cent"],
      ["ppm", "mg/kg", "0.000001", "part per million"],
    ],
  ),
];
