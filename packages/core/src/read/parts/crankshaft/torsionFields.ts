import { dimension } from "../../fields.ts";
import { requireStations } from "../../requireStations.ts";
import { table } from "../../tableField.ts";

/** What torsion and speed do to the crankshaft. */
export const torsionFields = {
  torsionStations: table({
    label: "Torsional chain",
    least: 2,
    most: 40,
    row: "{ inertia: 0.012 kg m2, stiffness: 480000 N m/rad }",
    columns: {
      inertia: dimension({
        label: "Inertia",
        symbol: "J",
        unit: "kg m2",
        range: ["0.000001 kg m2", "100 kg m2"],
        help: "Moment of inertia at this station: damper hub, throw with its share of rods and pistons, flywheel.",
      }),
      stiffness: dimension({
        label: "Stiffness to the next",
        symbol: "k",
        unit: "N m/rad",
        range: ["1 N m/rad", "1000000000 N m/rad"],
        help: "Torsional stiffness from this station to the next; left out at the last.",
      }),
    },
    optional: ["stiffness"],
    help: "The crankshaft as lumps of inertia joined by springs, from front to flywheel, from a computation or a test. It outranks the estimate from journal and web sizes.",
    check: requireStations,
  }),
  deflectionAtSpeed: dimension({
    label: "Give of crankshaft and caps",
    symbol: "delta_cd",
    unit: "mm",
    range: ["0 mm", "0.5 mm"],
    tolerance: "0.02",
    help: "How much higher the piston comes at speed because the crankshaft bends and the rod cap goes oval.",
    assumed: {
      value: "0.04 mm ± 0.02",
      because: "bending of the crankshaft and ovality of the cap take 0.02 to 0.06 mm (common practice)",
    },
  }),
};
