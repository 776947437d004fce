/** Solves Reynolds' equation on the grid of the table of finite bearings and writes src/bearings/filmTable.ts. */
import { writeFileSync } from "node:fs";
import { filmRow, tableEccentricities, tableLengthRatios } from "../src/bearings/filmTableNodes.ts";

const blocks = tableLengthRatios.map((ratio) =>
  tableEccentricities.map((eccentricity) => filmRow(ratio, eccentricity)),
);
writeFileSync(
  new URL("../src/bearings/filmTable.ts", import.meta.url),
  [
    'import type { FilmRow } from "./filmTableNodes.ts";',
    "",
    "/**",
    " * Films of finite bearings: a block for each length over diameter, a row for each eccentricity, as",
    " * `filmTableNodes.ts` lists them. Written by `scripts/writeFilmTable.ts`; a test holds it to the solver.",
    " */",
    "export const filmTable: readonly (readonly FilmRow[])[] = [",
    ...blocks.map(
      (rows, k) =>
        `  // length over diameter ${tableLengthRatios[k]}\n  [\n${rows.map((row) => `    [${row.join(", ")}],`).join("\n")}\n  ],`,
    ),
    "];",
    "",
  ].join("\n"),
);
console.log(`${blocks.flat().length} films`);
