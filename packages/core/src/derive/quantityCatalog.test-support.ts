import { fields } from "../read/fieldCatalog.ts";
import { findUnit } from "../units/findUnit.ts";
import { parseDimension } from "../units/parseDimension.ts";
import { groupsOf, pathsOf } from "./groupsOf.ts";
import type { Quantity } from "./Quantity.ts";
import { type Catalog, computeOr, draws, givenOf, inputSpec } from "./quantityDraws.test-support.ts";

/** What a check looked at, and what it found wrong. */
export interface Findings {
  readonly checked: number;
  readonly faults: readonly string[];
}

/** Runs a check over every quantity; it returns how much it looked at and says what is wrong through `fault`. */
export function over(
  catalog: Catalog,
  check: (one: Quantity, fault: (text: string) => void) => number,
): Findings {
  const faults: string[] = [];
  let checked = 0;
  for (const one of catalog.values()) checked += check(one, (text) => faults.push(`${one.id}: ${text}`));
  return { checked, faults };
}

const kindOf = (path: string) => fields.get(path)?.spec.kind;
const isChoice = (path: string): boolean => {
  const spec = fields.get(path.replace(/\.place$/, ""))?.spec;
  return path.endsWith(".place")
    ? spec?.kind === "dimension" && spec.places !== undefined
    : spec?.kind === "choice";
};

/** Every path leads to a field of the right kind or to a quantity, and none leads back. */
export function checkGraph(catalog: Catalog): Findings {
  const reaches = (from: string, wanted: string, seen = new Set<string>()): boolean =>
    pathsOf(catalog.get(from)!).some((path) => {
      if (path === wanted) return true;
      if (!catalog.has(path) || seen.has(path)) return false;
      return reaches(path, wanted, seen.add(path));
    });
  return over(catalog, (one, fault) => {
    for (const path of Object.values(one.inputs))
      if (inputSpec(path, catalog) === undefined) fault(`no number ${path}`);
    for (const path of Object.values(one.choices)) if (!isChoice(path)) fault(`no choice ${path}`);
    for (const path of Object.values(one.tables)) if (kindOf(path) !== "table") fault(`no table ${path}`);
    const names = new Set(groupsOf(one).flatMap((group) => Object.keys(group)));
    for (const name of one.routes.flatMap((route) => route.needs))
      if (!names.has(name)) fault(`a way needs ${name}, which is no input`);
    if (reaches(one.id, one.id)) fault("rests on itself");
    return pathsOf(one).length;
  });
}

/** Every source that is named is listed. */
export function checkSources(catalog: Catalog, listed: ReadonlySet<string>): Findings {
  return over(catalog, (one, fault) => {
    const named = [...one.sources, ...one.examples.flatMap(({ from }) => (from === undefined ? [] : [from]))];
    for (const { id } of named) if (!listed.has(id)) fault(`no source ${id}`);
    return named.length;
  });
}

/** Every example comes out, within half a unit of the last digit it is printed with. */
export function checkExamples(catalog: Catalog): Findings {
  return over(catalog, (one, fault) => {
    for (const example of one.examples) {
      const { numbers, words, tables, route } = givenOf(one, example, catalog);
      const wanted = parseDimension(example.expect, { unit: one.unit });
      const [, decimals = ""] = /^-?\d+\.?(\d*)/.exec(example.expect)!;
      const places = decimals.length;
      if (example.from === undefined && places !== one.decimals)
        fault(`${example.expect} has ${places} decimals`);
      const step = parseDimension(`${(0.5 * 10 ** -places).toFixed(places + 1)} ${wanted.unit.symbol}`, {
        unit: one.unit,
      });
      const found = one.compute(numbers, words, tables, route);
      if (!(Math.abs(found - wanted.nominal) <= step.nominal * (1 + 1e-9)))
        fault(`${example.expect}, found ${found}`);
    }
    return one.examples.length;
  });
}

/** Symbols are told apart, inputs carry the symbol of what they stand for, units and decimals can be printed. */
export function checkSymbols(catalog: Catalog): Findings {
  const taken = new Set<string>();
  return over(catalog, (one, fault) => {
    const key = `${one.system} ${one.symbol}`;
    if (taken.has(key)) fault(`another quantity of its system has the symbol ${one.symbol}`);
    taken.add(key);
    for (const [name, path] of Object.entries(one.inputs)) {
      const symbol = inputSpec(path, catalog)?.symbol;
      if (symbol !== name) fault(`${path} is called ${name}, not ${symbol}`);
    }
    if (findUnit(one.unit) === undefined) fault(`no unit ${one.unit}`);
    if (!Number.isInteger(one.decimals) || one.decimals < 0 || one.decimals > 5)
      fault(`${one.decimals} decimals`);
    return 1 + Object.keys(one.inputs).length;
  });
}

/** A quantity that is said to be monotone rests on none that is not, and its middle lies between its ends. */
export function checkShapes(catalog: Catalog): Findings {
  return over(catalog, (one, fault) => {
    if (one.shape === "guarded") return 0;
    for (const path of Object.values(one.inputs))
      if (catalog.get(path)?.shape === "guarded") fault(`rests on ${path}`);
    const others = givenOf(one, one.examples[0]!, catalog);
    let checked = 0;
    for (const numbers of draws(one, catalog, 60)) {
      for (const [name, value] of Object.entries(numbers)) {
        const [low, middle, high] = [0.9, 1, 1.1].map((share) =>
          computeOr(one, { ...numbers, [name]: share * value }, others),
        );
        if (low === undefined || middle === undefined || high === undefined) continue;
        const slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high), Math.abs(middle));
        checked += 1;
        if (middle > Math.max(low, high) + slack || middle < Math.min(low, high) - slack) {
          fault(`turns in ${name}`);
          return checked;
        }
      }
    }
    return checked;
  });
}
