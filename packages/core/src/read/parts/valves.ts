import type { DimensionSpec } from "../FieldSpec.ts";
import { count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** Fields of the inlet or the exhaust valves. @param side index of the symbols */
function valveFields(side: "i" | "e") {
  const length = (
    label: string,
    symbol: string,
    range: readonly [string, string],
    tolerance: string,
    help: string,
    more: Pick<DimensionSpec, "assumed" | "signs"> = {},
  ) => dimension({ label, symbol: `${symbol}${side}`, unit: "mm", range, tolerance, help, ...more });
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
    pocketDepth: length(
      "Pocket depth",
      "p_",
      ["0 mm", "20 mm"],
      "0.1",
      "Depth of the pocket in the crown, square to its floor, measured from where the valve would meet the flat crown.",
      {
        assumed: {
          value: "0 mm ± 0",
          because: "no pocket is entered: the crown is taken as flat, which leaves the least room",
          unless: [`${side === "i" ? "inletValve" : "exhaustValve"}.pocketRadius`],
        },
      },
    ),
    pocketRadius: length(
      "Pocket radius",
      "R_p_",
      ["5 mm", "60 mm"],
      "0.1",
      "Radius of the pocket’s wall about its own axis.",
    ),
    pocketOffset: length(
      "Pocket offset",
      "e_p",
      ["-10 mm", "10 mm"],
      "0.3",
      "Pocket axis from valve axis at top dead centre, in the plane of the tilt; positive towards the side to which the stem leans.",
      {
        assumed: {
          value: "0 mm ± 0.5",
          because: "pockets stand within about half a millimetre of the valve (common practice)",
        },
      },
    ),
    centreDistance: length(
      "Distance from the cylinder axis",
      "x_",
      ["0 mm", "120 mm"],
      "0.2",
      "From the cylinder axis to the middle of the valve’s face, shut.",
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
