import { groupsOf } from "./groupsOf.ts";
import type { Quantity } from "./Quantity.ts";

/** The way by which a quantity is computed, and what it takes on it: name → path. */
export interface TakenRoute {
  readonly index: number;
  readonly inputs: Readonly<Record<string, string>>;
  readonly choices: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, string>>;
  readonly assumes: string | undefined;
}

function without(group: Readonly<Record<string, string>>, left: ReadonlySet<string>) {
  return left.size === 0
    ? group
    : Object.fromEntries(Object.entries(group).filter(([name]) => !left.has(name)));
}

/** What one of its ways takes. */
export function routeAt(quantity: Quantity, index: number): TakenRoute {
  const needs = new Set(quantity.routes[index]?.needs);
  const left = new Set(quantity.routes.flatMap((route) => route.needs).filter((name) => !needs.has(name)));
  return {
    index,
    inputs: without(quantity.inputs, left),
    choices: without(quantity.choices, left),
    tables: without(quantity.tables, left),
    assumes: quantity.routes[index]?.assumes,
  };
}

/**
 * The first way whose needs are all there; where none is whole, the one that lacks the least, the surest first.
 * @param lacking how many fields a path lacks
 */
export function routeOf(quantity: Quantity, lacking: (path: string) => number): TakenRoute {
  const paths = Object.assign({}, ...groupsOf(quantity)) as Readonly<Record<string, string>>;
  const lacks = quantity.routes.map(({ needs }) =>
    needs.reduce((sum, name) => sum + lacking(paths[name]!), 0),
  );
  return routeAt(quantity, Math.max(0, lacks.indexOf(Math.min(...lacks))));
}
