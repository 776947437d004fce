import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { filmTable } from "./filmTable.ts";
import { filmRow, tableEccentricities, tableLengthRatios } from "./filmTableNodes.ts";
import { filmColumn, finiteFilm } from "./finiteFilm.ts";
import { reynoldsFilm } from "./reynoldsFilm.ts";

test("the table is what the solver gives", () => {
  let checked = 0;
  expect(filmTable).toHaveLength(tableLengthRatios.length);
  tableLengthRatios.forEach((ratio, block) => {
    tableEccentricities.forEach((eccentricity, row) => {
      const solved = filmRow(ratio, eccentricity);
      solved.forEach((value, column) => {
        nearly(filmTable[block]![row]![column]!, value, 1e-5);
        checked++;
      });
    });
  });
  expect(checked).toBe(11 * 18 * 5);
});

property.prop([between(0.02, 0.985), between(0.1, 2)], { numRuns: 40 })(
  "between its points it is right to 0.3 %",
  (eccentricity, lengthRatio) => {
    const input = { eccentricity, lengthRatio };
    const [table, solved] = [finiteFilm(input), reynoldsFilm(input)];
    nearly(table.sommerfeld, solved.sommerfeld, 3e-3);
    nearly(table.friction, solved.friction, 3e-3);
    nearly(table.attitude, solved.attitude, 3e-3);
    nearly(table.flow, solved.flow, 3e-3);
    nearly(table.pressureRatio, solved.pressureRatio, 3e-3);
    near(table.sideFlowShare, solved.sideFlowShare, 2e-3);
  },
);

test("beyond the ends of the table its last values are kept", () => {
  const share = filmColumn(0.4, "loadShare");
  expect(share(0.999)).toBe(share(0.99));
  expect(share(0)).toBe(share(0.01));
});

test("boundary", () => {
  refuses(() => finiteFilm({ eccentricity: 0.5, lengthRatio: 0.09 }), "lengthRatio");
  refuses(() => finiteFilm({ eccentricity: 1, lengthRatio: 0.5 }), "eccentricity");
  refusesNonFinite(finiteFilm, { eccentricity: 0.5, lengthRatio: 1 });
});
