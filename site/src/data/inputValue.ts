import { factType, formatNumber, type Quantity, quantities, unitOf, unitsLike } from "trialfit";
import { prettyUnit } from "./prettyUnit.ts";

const unitOfFact = (path: string): string => {
  const type = factType(path);
  return type?.kind === "number" ? type.unit : "1";
};

/** Unit in which a number of the build is shown, in words where it has none. */
export function inputUnit(name: string): string {
  if (factType(name)?.kind !== "number") return "";
  const unit = unitOfFact(name);
  return unit === "1" ? "plain number" : prettyUnit(unit);
}

/**
 * The unit with which a printed number can be put into a formula. Lengths, forces and pressures convert as units do. A
 * degree and a turn per minute do not: what they hide is pi, which formulas write themselves. They become radians.
 */
function plainUnit(symbol: string): string {
  const unit = unitOf(symbol);
  if (unit.pi === 0) return symbol;
  return unitsLike(unit).find(({ factor, pi }) => pi === 0 && factor.numerator === factor.denominator)!
    .symbol;
}

/** Whether a formula gives its result in whatever unit its inputs share: a ratio or a sum of numbers of one kind. */
function sharesUnit({ formula = "", inputs, unit }: Quantity): boolean {
  const units = new Set(Object.values(inputs).map(unitOfFact));
  const [shared] = units;
  return (
    units.size === 1 &&
    (unit === shared || unit === "1" || unit === "%") &&
    !/\b(pi|[a-z]+ *\()/.test(formula)
  );
}

/** Unit in which an input goes into the formula of a quantity. */
export function formulaUnit(quantity: Quantity, symbol: string): string {
  const unit = unitOfFact(quantity.inputs[symbol] ?? "");
  if (unit === "degC" || unit === "degF") return "K";
  return quantity.formula === undefined || sharesUnit(quantity) ? unit : plainUnit(unit);
}

function print(path: string, si: number, unit: string): string {
  if (unit === "K") return formatNumber(si, "K", { decimals: 1 });
  const decimals = unit === unitOfFact(path) ? quantities.get(path)?.decimals : undefined;
  return formatNumber(si, unit, decimals === undefined ? { digits: 6 } : { decimals });
}

/** The value of an input as it goes into a formula, in a unit that the formula takes; a temperature is absolute there. */
export function printInput(quantity: Quantity, symbol: string, si: number): string {
  return print(quantity.inputs[symbol] ?? "", si, formulaUnit(quantity, symbol));
}

/** The same as people read it, where that is in another unit: `8100 rpm` for `848.23 rad/s`. */
export function readInput(quantity: Quantity, symbol: string, si: number): string | undefined {
  const path = quantity.inputs[symbol] ?? "";
  const unit = unitOfFact(path);
  return unitOf(unit).pi === 0 || formulaUnit(quantity, symbol) === unit ? undefined : print(path, si, unit);
}

/** What a formula gives before it is turned into the unit of its quantity, where that is another: `0.5236 rad` for 30°. */
export function printResult(quantity: Quantity, si: number): string | undefined {
  const { unit, formula } = quantity;
  const plain = plainUnit(unit);
  if (formula === undefined || plain === unit || sharesUnit(quantity)) return undefined;
  return formatNumber(si, plain, { digits: 6 });
}
