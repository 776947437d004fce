import { quantity } from "./Quantity.ts";
import {
  chainExample,
  chainInputs,
  chainRoutes,
  chainTables,
  torsionChain,
  twistingModes,
} from "./torsionChain.ts";

interface Mode {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly mode: 1 | 2;
  readonly expect: string;
  readonly fromTable: string;
}

/** Declares a torsional natural frequency of the crankshaft. */
export function torsionFrequency({ mode, expect, fromTable, ...own }: Mode) {
  return quantity({
    ...own,
    unit: "Hz",
    decimals: 0,
    system: "torsion",
    meaning: `${mode === 1 ? "Lowest" : "Second"} frequency at which the crankshaft twists on its own, front end against flywheel. Where an order of the engine meets it, the twist builds up and can break the crankshaft.`,
    inputs: chainInputs,
    tables: chainTables,
    routes: chainRoutes,
    method:
      "Eigenvalues of the chain of inertias and torsional springs: from the table, or from damper hub, throws with their share of rods and pistons, and flywheel, with the mean of Carter’s and Ker Wilson’s stiffness between them.",
    compute: (n, _words, tables) =>
      (twistingModes(torsionChain(n, tables))[mode - 1]?.angularFrequency ?? Number.NaN) / (2 * Math.PI),
    shape: "guarded",
    valid: "small damping; the driveline behind the clutch left out",
    sources: [{ id: "taylor" }],
    examples: [
      { given: chainExample, expect },
      {
        given: {
          stations:
            mode === 1
              ? "0.1 kg m2, 200000 N m/rad; 0.3 kg m2"
              : "0.1 kg m2, 200000 N m/rad; 0.2 kg m2, 200000 N m/rad; 0.1 kg m2",
        },
        expect: fromTable,
      },
    ],
    display: true,
  });
}
