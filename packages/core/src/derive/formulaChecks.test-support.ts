import { type MathNode, parse, type SymbolNode } from "mathjs";
import { unitOf } from "../units/findUnit.ts";
import { dimensionsOf, sameAs, withoutAngle } from "./formulaDimensions.test-support.ts";
import type { Quantity } from "./Quantity.ts";
import { type Findings, over } from "./quantityCatalog.test-support.ts";
import { type Catalog, computeOr, draws, inputSpec } from "./quantityDraws.test-support.ts";

const withFormula = (
  catalog: Catalog,
  check: (one: Quantity, root: MathNode, fault: (text: string) => void) => number,
) => over(catalog, (one, fault) => (one.formula === undefined ? 0 : check(one, parse(one.formula), fault)));

/** Formula and computation agree over random inputs. */
export function checkFormulas(catalog: Catalog, wanted: number): Findings {
  return withFormula(catalog, (one, root, fault) => {
    const used = new Set(
      root.filter((node) => node.type === "SymbolNode").map((node) => (node as SymbolNode).name),
    );
    for (const name of Object.keys(one.inputs)) if (!used.has(name)) fault(`${name} is not in the formula`);
    const formula = root.compile();
    let agreed = 0;
    for (const numbers of draws(one, catalog, 40 * wanted)) {
      const found = computeOr(one, numbers);
      if (found === undefined) continue;
      const expected: unknown = formula.evaluate({ ...numbers });
      const near =
        typeof expected === "number" &&
        Math.abs(found - expected) <= 1e-9 * Math.max(Math.abs(found), Math.abs(expected));
      if (!near) {
        fault(`${found}, but the formula gives ${expected} at ${JSON.stringify(numbers)}`);
        return agreed;
      }
      agreed += 1;
      if (agreed === 4 * wanted) break;
    }
    if (agreed < wanted) fault(`only ${agreed} draws could be computed`);
    return agreed;
  });
}

/** The units of the inputs give the unit of the result. */
export function checkDimensions(catalog: Catalog): Findings {
  return withFormula(catalog, (one, root, fault) => {
    const inputs = Object.entries(one.inputs).map(
      ([name, path]) => [name, withoutAngle(unitOf(inputSpec(path, catalog)!.unit).dimensions)] as const,
    );
    try {
      const found = dimensionsOf(root, new Map(inputs));
      if (!sameAs(found, withoutAngle(unitOf(one.unit).dimensions)))
        fault(`${one.unit}, but the formula gives ${found}`);
    } catch (error) {
      fault((error as Error).message);
    }
    return 1;
  });
}
