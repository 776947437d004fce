import { toSi } from "../../units/convert.ts";
import { findUnit, sameDimensions, unitOf } from "../../units/findUnit.ts";
import { DimensionError } from "../../units/parseDimension.ts";
import { rational, rationalFromDecimal } from "../../units/Rational.ts";
import { PRICE_SHARES } from "../lists/PartsList.ts";
import { type Aim, aimNames, type Weights, weightsOf } from "./Objective.ts";

/** What one more of each aim is worth, as money: `{ cost: "1", mass: "30/kg", time: "5/d", margin: "400" }`. */
export type WeightTexts = Partial<Readonly<Record<Aim, string>>>;

/** Unit of what a weight is per; none for the cost, and for the margin, of which 1 is the whole. */
const perUnit: Readonly<Record<Aim, string | undefined>> = {
  cost: undefined,
  margin: undefined,
  mass: "kg",
  time: "d",
};

const example = "weights such as cost 1, mass 30/kg, time 5/d, margin 400: what each is worth, as money";

function readWeight(aim: Aim, text: string): number {
  const [, digits, spelling] = /^\s*(\d+(?:\.\d+)?)\s*(?:\/\s*(.+?))?\s*$/.exec(text) ?? [];
  const number = digits === undefined ? undefined : rationalFromDecimal(digits);
  if (number === undefined) throw new DimensionError(`"${text}" as the weight of ${aim}`, example);
  const value = Number(number.numerator) / Number(number.denominator);
  const per = perUnit[aim];
  if (per === undefined) {
    if (spelling !== undefined)
      throw new DimensionError(`a unit in the weight of ${aim}`, `a number alone: ${example}`);
    return value;
  }
  const unit = spelling === undefined ? undefined : findUnit(spelling);
  if (unit === undefined || !sameDimensions(unit.dimensions, unitOf(per).dimensions))
    throw new DimensionError(
      spelling === undefined ? `a weight of ${aim} without a unit` : `"${spelling}" as the unit of ${aim}`,
      `what it is per, such as 30/${per}`,
    );
  return value / toSi(rational(1n), unit);
}

/**
 * Reads what combinations are compared by: one aim, or a weight for each of several.
 * @throws DimensionError when a weight is no number, lacks its unit, is of something else, or none is above zero
 */
export function readWeights(objective: Aim | WeightTexts): Weights {
  if (typeof objective === "string") {
    if (aimNames.includes(objective)) return weightsOf(objective);
    throw new DimensionError(`the objective "${objective}"`, `one of ${aimNames.join(", ")}, or weights`);
  }
  const unknown = Object.keys(objective).find((name) => !aimNames.some((aim) => aim === name));
  if (unknown !== undefined)
    throw new DimensionError(`a weight of "${unknown}"`, `weights of ${aimNames.join(", ")} only`);
  const weights = Object.fromEntries(
    aimNames.map((aim) => [aim, objective[aim] === undefined ? 0 : readWeight(aim, objective[aim])]),
  ) as Record<Aim, number>;
  if (aimNames.every((aim) => weights[aim] === 0)) throw new DimensionError("weights of nothing", example);
  return weights;
}

/** Weights per ten-thousandth of the currency in place of per unit of it, as prices are counted. */
export function inShares({ cost, margin, mass, time }: Weights): Weights {
  // One aim alone is compared as it is: whole prices stay whole.
  if (cost === 0) return { cost, margin, mass, time };
  return { cost, margin: margin * PRICE_SHARES, mass: mass * PRICE_SHARES, time: time * PRICE_SHARES };
}
