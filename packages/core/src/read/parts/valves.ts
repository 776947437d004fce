import { count, dimension } from "../fields.ts";
import { part } from "../part.ts";
import { metalFields } from "./valves/metalFields.ts";
import { pocketFields } from "./valves/pocketFields.ts";
import { valveLength } from "./valves/valveLength.ts";

/** Fields of the inlet or the exhaust valves. @param side index of the symbols */
function valveFields(side: "i" | "e") {
  const length = valveLength(side);
  return {
    perCylinder: count({
      label: "Valves in a cylinder",
      symbol: `n_v${side}`,
      help: "Counted, of this kind.",
      least: 1,
      most: 3,
    }),
    headDiameter: length(
      "Head diameter",
      "d_",
      ["8 mm", "90 mm"],
      "0.05",
      "Outer diameter of the valve’s head.",
    ),
    tilt: dimension({
      label: "Tilt",
      symbol: `tau_${side}`,
      unit: "deg",
      range: ["0 deg", "45 deg"],
      tolerance: "0.2",
      help: "Angle of the stem against the cylinder axis.",
    }),
    recess: length(
      "Recess",
      "z_",
      ["-10 mm", "30 mm"],
      "0.1",
      "How far the lowest edge of the shut valve lies inside the face of the head, along the cylinder.",
      { signs: { "inside head": 1, "proud of head": -1 } },
    ),
    ...pocketFields(side),
    ...metalFields(side),
    centreDistance: length(
      "Distance from the cylinder axis",
      "x_",
      ["0 mm", "120 mm"],
      "0.2",
      "From the cylinder axis to the middle of the valve’s face, shut, square to the crankshaft.",
    ),
    offsetAlong: length(
      "Offset along the crankshaft",
      "y_",
      ["-60 mm", "60 mm"],
      "0.2",
      "From the cylinder axis to the middle of the valve’s face, along the crankshaft. Of a pair, half the distance between their middles; one valve alone counts either way, inlet and exhaust alike.",
    ),
    lash: length(
      "Valve lash",
      "s_",
      ["0 mm", "1.5 mm"],
      "0.03",
      "Lash at the valve with which the engine runs; zero with hydraulic followers.",
      {
        assumed: {
          value: "0.2 mm ± 0.2",
          because: "lash lies between 0 with hydraulic and 0.4 mm with solid followers (common practice)",
        },
      },
    ),
    coldLash: length(
      "Valve lash set cold",
      "s_c",
      ["0 mm", "1.5 mm"],
      "0.02",
      "Lash at the valve as set on the cold engine, at about 20 °C.",
    ),
    stemDiameter: length(
      "Stem diameter",
      "d_st",
      ["3 mm", "16 mm"],
      "0.005",
      "Diameter of the stem where it runs in the guide.",
    ),
    guideBore: length(
      "Guide bore",
      "D_gd",
      ["3 mm", "16 mm"],
      "0.008",
      "Bore of the guide, fitted in the head.",
    ),
    seatWidth: dimension({
      label: "Seat width",
      symbol: `b_s${side}`,
      unit: "mm",
      measureBy: "trial-assembly",
      range: ["0.2 mm", "6 mm"],
      tolerance: "0.1",
      help: "Width of the ring on which valve and seat touch, shown by marking ink.",
    }),
    retainerToSeal: length(
      "Retainer to seal, shut",
      "g_r_",
      ["1 mm", "40 mm"],
      "0.2",
      "From the underside of the spring retainer to the top of the stem seal or guide with the valve shut.",
    ),
    mass: dimension({
      label: "Valve mass",
      symbol: `m_v${side}`,
      unit: "g",
      range: ["5 g", "600 g"],
      tolerance: "2 %",
      help: "Mass of one valve, weighed.",
    }),
  };
}

/** The inlet valves. */
export const inletValve = part(
  { key: "inletValve", id: "inlet-valve", label: "Inlet valve", help: "The inlet valves and their pockets." },
  valveFields("i"),
);

/** The exhaust valves. */
export const exhaustValve = part(
  {
    key: "exhaustValve",
    id: "exhaust-valve",
    label: "Exhaust valve",
    help: "The exhaust valves and their pockets.",
  },
  valveFields("e"),
);
