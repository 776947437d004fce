import { type MathNode, parse, type SymbolNode } from "mathjs";
import { fields } from "../read/fieldCatalog.ts";
import { unitOf } from "../units/findUnit.ts";
import { dimensionsOf, sameAs, withoutAngle } from "./formulaDimensions.test-support.ts";
import type { Quantity } from "./Quantity.ts";
import { type Findings, over } from "./quantityCatalog.test-support.ts";
import { type Catalog, computeOr, draws, inputSpec, type Others } from "./quantityDraws.test-support.ts";
import { routeAt } from "./routeOf.ts";

/** One formula of a quantity, and what it is to be compared under. */
interface OneFormula {
  readonly root: MathNode;
  readonly inputs: Readonly<Record<string, string>>;
  readonly others: Others;
}

/** True where a formula, or one for each case, says how it is computed. */
export const isClosed = (one: Quantity): boolean =>
  one.formula !== undefined || Object.keys(one.cases).length > 0;

/** The formula of a quantity, or that of each of its cases; cases that are not just its own are a fault. */
function formulasOf(one: Quantity, fault: (text: string) => void): readonly OneFormula[] {
  const whole = { words: {}, tables: {}, route: 0 };
  if (one.formula !== undefined) return [{ root: parse(one.formula), inputs: one.inputs, others: whole }];
  const [choice, ...more] = Object.entries(one.choices);
  const spec = choice && fields.get(choice[1].replace(/\.place$/, ""))?.spec;
  const words =
    spec?.kind === "choice"
      ? Object.keys(spec.options)
      : spec?.kind === "dimension"
        ? (spec.places ?? [])
        : [];
  const wanted = one.routes.length > 0 ? one.routes.map((_, index) => `${index + 1}`) : words;
  const given = Object.keys(one.cases);
  if (given.length === 0) return [];
  if (more.length > 0 || given.toSorted().join() !== [...wanted].toSorted().join())
    fault(`has cases ${given.join(", ")}, not ${wanted.join(", ")}`);
  return Object.entries(one.cases).map(([name, formula]) => {
    const isWay = one.routes.length > 0;
    const route = isWay ? Number(name) - 1 : 0;
    return {
      root: parse(formula),
      inputs: routeAt(one, route).inputs,
      others: { words: isWay ? {} : { [choice![0]]: name }, tables: {}, route },
    };
  });
}

const namesIn = ({ root }: OneFormula): readonly string[] =>
  root.filter((node) => node.type === "SymbolNode").map((node) => (node as SymbolNode).name);

/** Formula and computation agree over random inputs. */
export function checkFormulas(catalog: Catalog, wanted: number): Findings {
  return over(catalog, (one, fault) => {
    const formulas = formulasOf(one, fault);
    if (formulas.length === 0) return 0;
    const used = new Set(formulas.flatMap(namesIn));
    for (const name of Object.keys(one.inputs)) if (!used.has(name)) fault(`${name} is not in the formula`);
    return formulas.reduce((sum, formula) => sum + agreed(one, formula, { catalog, wanted, fault }), 0);
  });
}

interface Comparison {
  readonly catalog: Catalog;
  readonly wanted: number;
  readonly fault: (text: string) => void;
}

/** How many draws agree with one formula. */
function agreed(one: Quantity, { root, inputs, others }: OneFormula, { catalog, wanted, fault }: Comparison) {
  const formula = root.compile();
  let count = 0;
  for (const numbers of draws(one, catalog, 40 * wanted, inputs)) {
    const found = computeOr(one, numbers, others);
    if (found === undefined) continue;
    const expected: unknown = formula.evaluate({ ...numbers });
    const near =
      typeof expected === "number" &&
      Math.abs(found - expected) <= 1e-9 * Math.max(Math.abs(found), Math.abs(expected));
    if (!near) {
      fault(`${found}, but the formula gives ${expected} at ${JSON.stringify(numbers)}`);
      return count;
    }
    count += 1;
    if (count === 4 * wanted) break;
  }
  if (count < wanted) fault(`only ${count} draws could be computed`);
  return count;
}

/** The units of the inputs give the unit of the result. */
export function checkDimensions(catalog: Catalog): Findings {
  return over(catalog, (one, fault) => {
    const wanted = withoutAngle(unitOf(one.unit).dimensions);
    for (const { root, inputs } of formulasOf(one, fault)) {
      const known = Object.entries(inputs).map(
        ([name, path]) => [name, withoutAngle(unitOf(inputSpec(path, catalog)!.unit).dimensions)] as const,
      );
      try {
        const found = dimensionsOf(root, new Map(known));
        if (!sameAs(found, wanted)) fault(`${one.unit}, but the formula gives ${found}`);
      } catch (error) {
        fault((error as Error).message);
      }
    }
    return isClosed(one) ? 1 : 0;
  });
}
