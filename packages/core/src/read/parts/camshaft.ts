import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";
import { table } from "../tableField.ts";

const centre = (symbol: string, label: string, help: string) =>
  dimension({ label, symbol, unit: "deg", range: ["60 deg", "150 deg"], tolerance: "1", help });

const duration = (symbol: string, label: string, help: string) =>
  dimension({ label, symbol, unit: "deg", range: ["100 deg", "400 deg"], tolerance: "2", help });

const lobeLift = (symbol: string, label: string) =>
  dimension({
    label,
    symbol,
    unit: "mm",
    range: ["1 mm", "25 mm"],
    tolerance: "0.05",
    help: "Greatest lift of the lobe above its base circle, before any rocker.",
  });

const checkingLift = (symbol: string, label: string, help: string) =>
  dimension({ label, symbol, unit: "mm", range: ["0.02 mm", "6 mm"], help });

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

/** The camshaft as installed. */
export const camshaft = part(
  { key: "camshaft", id: "camshaft", label: "Camshaft", help: "The camshaft as installed." },
  {
    inletClosing: dimension({
      label: "Inlet closing",
      symbol: "theta_ic",
      unit: "deg",
      range: ["0 deg", "130 deg"],
      tolerance: "2",
      help: "Crank angle after bottom dead centre at which the closing inlet valve is down to 0.20 mm of lift, lash set; not the angle at 1.27 mm.",
    }),
    inletCentre: centre(
      "theta_ci",
      "Inlet centre line",
      "Crank angle after top dead centre at which the inlet valve has its greatest lift, as timed.",
    ),
    exhaustCentre: centre(
      "theta_ce",
      "Exhaust centre line",
      "Crank angle before top dead centre at which the exhaust valve has its greatest lift, as timed.",
    ),
    checkingLift: checkingLift(
      "l_1",
      "Checking lift of the durations",
      "Lift at the valve between which the durations are counted; stated on the camshaft’s card.",
    ),
    inletDuration: duration(
      "D_i",
      "Inlet duration",
      "Crank angle for which the inlet valve is above the checking lift.",
    ),
    exhaustDuration: duration(
      "D_e",
      "Exhaust duration",
      "Crank angle for which the exhaust valve is above the checking lift.",
    ),
    upperCheckingLift: checkingLift(
      "l_2",
      "Upper checking lift",
      "A second, higher lift at the valve at which durations are stated too.",
    ),
    inletUpperDuration: duration(
      "D_i2",
      "Inlet duration at the upper checking lift",
      "Crank angle for which the inlet valve is above the upper checking lift.",
    ),
    exhaustUpperDuration: duration(
      "D_e2",
      "Exhaust duration at the upper checking lift",
      "Crank angle for which the exhaust valve is above the upper checking lift.",
    ),
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
    bearingClearance: dimension({
      label: "Camshaft bearing clearance",
      symbol: "C_cam",
      unit: "mm",
      range: ["-0.1 mm", "0.5 mm"],
      tolerance: "0.008",
      help: "Bore of a fitted camshaft bearing less its journal, across the diameter, by bore gauge and micrometer.",
    }),
    rotation: choice({
      label: "Sense of rotation",
      help: "Which way the camshaft turns, seen from the same end as the crankshaft.",
      options: {
        "as-crankshaft": "the same way: chain, belt, or gears with one between",
        "against-crankshaft": "the other way: a pair of gears",
      },
      assumed: {
        value: "as-crankshaft",
        because: "most camshafts in a block are driven by a chain (common practice)",
      },
    }),
    sprocketRadius: dimension({
      label: "Crankshaft sprocket radius",
      symbol: "R_sp",
      unit: "mm",
      range: ["10 mm", "100 mm"],
      help: "Pitch radius of the sprocket or pulley on the crankshaft that drives the camshaft.",
    }),
    centreDistanceLoss: dimension({
      label: "Loss of centre distance",
      symbol: "m_c",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.02",
      help: "How much nearer an overhead camshaft came to the crankshaft by machining deck and head, less a thicker gasket.",
    }),
  },
);
