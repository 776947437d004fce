import { requireAll } from "../check/requireAll.ts";
import { filmTable } from "./filmTable.ts";
import { tableEccentricities, tableLengthRatios } from "./filmTableNodes.ts";
import { lengthRatios } from "./lengthRatios.ts";
import { type FilmVariables, frictionVariable } from "./reynoldsFilm.ts";
import { shortBearingSommerfeld } from "./shortBearing.ts";
import { tableCurveThrough } from "./tableCurve.ts";

/** Columns of a row by name. */
const columns = { loadShare: 0, attitude: 1, flow: 2, sideFlowShare: 3, pressureRatio: 4 } as const;
export type FilmColumn = keyof typeof columns;

// Over these two the columns run nearly straight; the share of the load itself does so by its logarithm.
const thinning = (eccentricity: number) => -Math.log(1 - eccentricity);
const rows = tableEccentricities.map(thinning);
const blocks = tableLengthRatios.map(Math.log);

/** Of each column: by row, its values over the lengths, the curves made when the column is asked for first. */
const acrossBy = new Map<FilmColumn, readonly ((logRatio: number) => number)[]>();

function acrossOf(column: FilmColumn): readonly ((logRatio: number) => number)[] {
  let across = acrossBy.get(column);
  if (across === undefined) {
    across = rows.map((_, row) => {
      const values = filmTable.map((block) => block[row]![columns[column]]);
      return tableCurveThrough(blocks, column === "loadShare" ? values.map(Math.log) : values);
    });
    acrossBy.set(column, across);
  }
  return across;
}

/** The curve of each column that was made last: a search moves the length over the diameter seldom. */
const lastBy = new Map<
  FilmColumn,
  { readonly lengthRatio: number; readonly curve: (at: number) => number }
>();

/**
 * One column of the table for any length over diameter, as a function of the eccentricity. Below 0.01 and above
 * 0.99 it keeps the value there.
 * @param lengthRatio length over diameter [-], 0.1 to 2
 * @param column which
 * @throws RangeError when the ratio is out of range
 * @returns value of the column by eccentricity [-]
 *
 * Source: Reynolds' equation, see `finiteFilm`.
 */
export function filmColumn(lengthRatio: number, column: FilmColumn): (eccentricity: number) => number {
  requireAll(lengthRatios, { lengthRatio });
  let last = lastBy.get(column);
  if (last?.lengthRatio !== lengthRatio) {
    const logRatio = Math.log(lengthRatio);
    const values = acrossOf(column).map((across) => across(logRatio));
    last = { lengthRatio, curve: tableCurveThrough(rows, values) };
    lastBy.set(column, last);
  }
  const { curve } = last;
  return column === "loadShare"
    ? (eccentricity) => Math.exp(curve(thinning(eccentricity)))
    : (eccentricity) => curve(thinning(eccentricity));
}

/**
 * Oil film of a steadily loaded plain bearing of finite length, from the table of solved films: what
 * `reynoldsFilm` gives within 0.3 % (test), some thousand times faster.
 * @param input.eccentricity offset of the journal over the radial clearance [-], above 0 and below 1
 * @param input.lengthRatio length over diameter [-], 0.1 to 2
 * @returns the variables of the film
 * @throws RangeError when a value is out of range
 *
 * Source: Reynolds' equation; held to the table of A. A. Raimondi and J. Boyd, ASLE Transactions 1 (1958).
 */
export function finiteFilm(input: { eccentricity: number; lengthRatio: number }): FilmVariables {
  const { eccentricity, lengthRatio } = input;
  const at = (column: FilmColumn) => filmColumn(lengthRatio, column)(eccentricity);
  const sommerfeld = shortBearingSommerfeld(input) / at("loadShare");
  const attitude = at("attitude");
  return {
    sommerfeld,
    attitude,
    friction: frictionVariable({ sommerfeld, attitude, eccentricity }),
    flow: at("flow"),
    sideFlowShare: at("sideFlowShare"),
    pressureRatio: at("pressureRatio"),
  };
}
