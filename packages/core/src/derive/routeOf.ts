import { type Asking, groupsOf } from "./groupsOf.ts";

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
export function routeAt(asking: Asking, index: number): TakenRoute {
  const needs = new Set(asking.routes[index]?.needs);
  const left = new Set(asking.routes.flatMap((route) => route.needs).filter((name) => !needs.has(name)));
  return {
    index,
    inputs: without(asking.inputs, left),
    choices: without(asking.choices, left),
    tables: without(asking.tables, left),
    assumes: asking.routes[index]?.assumes,
  };
}

/**
 * The first way whose needs are all there; where none is whole, the one that lacks the least, the surest first.
 * @param lacking how many fields a path lacks
 */
export function routeOf(asking: Asking, lacking: (path: string) => number): TakenRoute {
  const paths = Object.assign({}, ...groupsOf(asking)) as Readonly<Record<string, string>>;
  const lacks = asking.routes.map(({ needs }) => needs.reduce((sum, name) => sum + lacking(paths[name]!), 0));
  return routeAt(asking, Math.max(0, lacks.indexOf(Math.min(...lacks))));
}
