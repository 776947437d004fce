import { fc, test } from "@fast-check/vitest";
import { eigs } from "mathjs";
import { expect } from "vitest";
import { between, nearly } from "../check/support.test-support.ts";
import { torsionalModes } from "./torsionalModes.ts";

/** A chain of stations of like size, as crankshafts are. */
const chains = fc
  .array(fc.tuple(between(0.2, 5), between(0.2, 5)), { minLength: 2, maxLength: 10 })
  .map((rows) => ({
    inertias: rows.map(([inertia]) => 0.02 * inertia),
    stiffnesses: rows.slice(1).map(([, stiffness]) => 4e5 * stiffness),
  }));

test.prop([chains], { numRuns: 60 })(
  "natural frequencies are those of an eigenvalue library",
  ({ inertias, stiffnesses }) => {
    // J^(-1/2) K J^(-1/2), written out station by station.
    const matrix = inertias.map((_, row) =>
      inertias.map((__, column) => {
        const before = stiffnesses[row - 1] ?? 0;
        const after = stiffnesses[row] ?? 0;
        const spring =
          row === column ? before + after : column === row - 1 ? -before : column === row + 1 ? -after : 0;
        return spring / Math.sqrt(inertias[row]! * inertias[column]!);
      }),
    );
    const { values } = eigs(matrix);
    const expected = (values as number[]).map((value) => Math.sqrt(Math.max(0, value))).sort((a, b) => a - b);
    const found = torsionalModes({ inertias, stiffnesses }).map(({ angularFrequency }) => angularFrequency);
    expect(found).toHaveLength(expected.length);
    // The first turns without twist: its frequency is nought but for rounding.
    for (const [index, frequency] of found.entries())
      if (index > 0) nearly(frequency, expected[index]!, 1e-6);
  },
);
