import { DimensionError } from "../../units/parseDimension.ts";
import { rationalFromDecimal } from "../../units/Rational.ts";
import { CURRENCY } from "./listColumns.ts";
import { PRICE_SHARES } from "./PartsList.ts";
import { attemptCell, type RowReader } from "./RowReader.ts";

const PRICE = /^(\d{1,9}(?:\.\d{1,4})?)(?:\s*(\S+))?$/;
const EXAMPLE = (1249.5).toFixed(2);

/** The currency that a price names itself; all prices of a list are in one, since they are added. */
function ownCurrency(own: string, { head, money }: RowReader): string {
  if (head.currency !== undefined)
    throw new DimensionError(
      "not a price",
      `an amount such as ${EXAMPLE} in ${head.currency}, without sign or currency`,
    );
  if (!CURRENCY.test(own))
    throw new DimensionError(
      `the currency "${own}"`,
      `three capital letters (ISO 4217), such as ${EXAMPLE} EUR`,
    );
  if (money.currency !== undefined && money.currency !== own)
    throw new DimensionError(
      `a price in ${own}`,
      `one in ${money.currency}, as further up in the list: prices are added`,
    );
  return own;
}

/** The price of a row in shares of its currency, which stands in the head of the column or in the cell. */
export function readPrice(reader: RowReader): number | undefined {
  return attemptCell(reader, "price", ({ value }) => {
    const { head, money } = reader;
    const [, amount, own] = PRICE.exec(String(value).trim()) ?? [];
    const number = amount === undefined ? undefined : rationalFromDecimal(amount);
    if (number === undefined)
      throw new DimensionError(
        "not a price",
        `an amount such as ${EXAMPLE}${head.currency === undefined ? " EUR" : ` in ${head.currency}, without sign or currency`}`,
      );
    if (own !== undefined) money.currency = ownCurrency(own, reader);
    else if (head.currency === undefined)
      throw new DimensionError(
        "a price without a currency",
        "the currency once, in the head of the column: price (EUR); in YAML and JSON units: { price: EUR }; or in each cell: 1249.50 EUR",
      );
    return Number((number.numerator * BigInt(PRICE_SHARES)) / number.denominator);
  });
}
