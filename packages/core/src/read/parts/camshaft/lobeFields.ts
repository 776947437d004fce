import { dimension } from "../../fields.ts";
import { table } from "../../tableField.ts";

const lobeLift = (symbol: string, label: string) =>
  dimension({
    label,
    symbol,
    unit: "mm",
    range: ["1 mm", "25 mm"],
    tolerance: "0.05",
    help: "Greatest lift of the lobe above its base circle, before any rocker.",
  });

const liftTable = (label: string) =>
  table({
    label,
    least: 4,
    most: 720,
    row: "{ angle: 40 deg, lift: 7.35 mm }",
    columns: {
      angle: dimension({
        label: "Crank angle",
        symbol: "theta",
        unit: "deg",
        range: ["-360 deg", "720 deg"],
        help: "Crank angle from the top dead centre at which both valves overlap, negative before it.",
      }),
      lift: dimension({
        label: "Valve lift",
        symbol: "L",
        unit: "mm",
        range: ["0 mm", "30 mm"],
        help: "Lift at the valve with its lash set.",
      }),
    },
    help: "Measured lift of the valve against crank angle, with the camshaft timed and the lash set; rows in order, at most 20° apart while the valve is open. It outranks the durations.",
  });

/** How far the lobes lift, and their shape. */
export const lobeFields = {
  inletLobeLift: lobeLift("h_i", "Inlet lobe lift"),
  exhaustLobeLift: lobeLift("h_e", "Exhaust lobe lift"),
  inletLiftTable: liftTable("Inlet lift table"),
  exhaustLiftTable: liftTable("Exhaust lift table"),
  baseCircleRadius: dimension({
    label: "Base circle radius",
    symbol: "R_bc",
    unit: "mm",
    range: ["5 mm", "60 mm"],
    tolerance: "0.1",
    help: "Radius of the lobe where it does not lift.",
  }),
  noseRadius: dimension({
    label: "Nose radius",
    symbol: "R_n",
    unit: "mm",
    range: ["1 mm", "60 mm"],
    tolerance: "10 %",
    help: "Radius of curvature of the lobe at its nose.",
  }),
  lobeWidth: dimension({
    label: "Lobe width",
    symbol: "b_l",
    unit: "mm",
    range: ["4 mm", "40 mm"],
    tolerance: "0.2",
    help: "Width over which lobe and follower touch.",
  }),
};
