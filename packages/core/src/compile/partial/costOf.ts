import { everyRoot } from "../../derive/everyRoot.ts";
import type { Catalog } from "../../derive/rootsOf.ts";

/** How many times dearer each of these makes a quantity: a search inside of tolerances, a computation that is no formula. */
const SEARCHED = 10;
const NO_FORMULA = 10;

/** About what a fact costs: 0 for a field; of quantities the same in every run, to order by and for nothing else. */
export function costOf(catalog: Catalog, fact: string): number {
  const quantity = catalog.get(fact);
  if (quantity === undefined) return 0;
  const searched = quantity.shape === "guarded" ? SEARCHED : 1;
  const formula = quantity.formula === undefined ? NO_FORMULA : 1;
  return everyRoot(catalog, fact).size * searched * formula;
}
