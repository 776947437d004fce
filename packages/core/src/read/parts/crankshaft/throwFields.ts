import { dimension } from "../../fields.ts";
import { requireThrows } from "../../requireThrows.ts";
import { table } from "../../tableField.ts";

/** Where each cylinder’s throw stands and when it fires. */
export const throwFields = {
  throws: table({
    label: "Throws by cylinder",
    least: 1,
    most: 12,
    row: "{ pin: 90 deg, bank: 45 deg, position: 120 mm, fires: 315 deg }",
    columns: {
      pin: dimension({
        label: "Crankpin angle",
        symbol: "beta",
        unit: "deg",
        range: ["-360 deg", "720 deg"],
        help: "Angle of the cylinder’s crankpin on the crankshaft, in the sense of rotation, from any line fixed on it.",
      }),
      bank: dimension({
        label: "Bank angle",
        symbol: "psi",
        unit: "deg",
        range: ["-180 deg", "360 deg"],
        help: "Direction in which the cylinder points, in the sense of rotation, from any line fixed on the block; 0 for all in a single row.",
      }),
      position: dimension({
        label: "Position",
        symbol: "z",
        unit: "mm",
        range: ["-2000 mm", "2000 mm"],
        help: "Place of the cylinder axis along the crankshaft, from any point.",
      }),
      fires: dimension({
        label: "Firing angle",
        symbol: "theta_f",
        unit: "deg",
        range: ["0 deg", "720 deg"],
        help: "Crank angle, over the two turns of a cycle, at which this cylinder is at its firing top dead centre.",
      }),
    },
    help: "One row for each cylinder, in the order of their numbers: where its crankpin stands, where it points, where it lies and when it fires.",
    check: requireThrows,
  }),
};
