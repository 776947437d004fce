import { factType, formatNumber, type Quantity, quantities } from "trialfit";
import { prettyUnit } from "./prettyUnit.ts";

/** Unit in which a number of the build is shown, in words where it has none. */
export function inputUnit(name: string): string {
  const type = factType(name);
  if (type?.kind !== "number") return "";
  return type.unit === "1" ? "plain number" : prettyUnit(type.unit);
}

/** The value of an input as it goes into a formula, in the unit of its kind; a temperature is absolute there. */
export function printInput(quantity: Quantity, symbol: string, si: number): string {
  const path = quantity.inputs[symbol] ?? "";
  const type = factType(path);
  const unit = type?.kind === "number" ? type.unit : "1";
  if (unit === "degC" || unit === "degF") return formatNumber(si, "K", { decimals: 1 });
  const decimals = quantities.get(path)?.decimals;
  return formatNumber(si, unit, decimals === undefined ? { digits: 6 } : { decimals });
}
