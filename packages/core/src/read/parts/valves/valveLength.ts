import type { DimensionSpec } from "../../FieldSpec.ts";
import { dimension } from "../../fields.ts";

/** A length of the inlet or the exhaust valve. @param side index of its symbol */
export function valveLength(side: "i" | "e") {
  return (
    label: string,
    symbol: string,
    range: readonly [string, string],
    tolerance: string,
    help: string,
    more: Pick<DimensionSpec, "assumed" | "signs"> = {},
  ) => dimension({ label, symbol: `${symbol}${side}`, unit: "mm", range, tolerance, help, ...more });
}
