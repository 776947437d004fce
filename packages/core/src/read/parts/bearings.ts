import type { PositionKind } from "../FieldSpec.ts";
import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

const linings = {
  "white-metal": "tin-based white metal",
  "aluminium-tin": "aluminium-tin or aluminium-silicon",
  "copper-lead": "copper-lead or lead bronze with overlay",
  sputtered: "sputtered or other vapour-deposited overlay",
};

function shellFields(where: string, loaded: string, per: PositionKind) {
  return {
    wall: dimension({
      label: "Shell wall",
      symbol: "t_s",
      unit: "mm",
      per,
      measureBy: "trial-assembly",
      range: ["0.5 mm", "10 mm"],
      tolerance: "0.004",
      help: `Wall of one ${where} bearing shell at its crown, square to the joint.`,
    }),
    length: dimension({
      label: "Effective shell length",
      symbol: "L",
      unit: "mm",
      range: ["4 mm", "150 mm"],
      tolerance: "0.1",
      help: `Length along the crankshaft of the shell that takes the gas load (${loaded}), its chamfers and its own grooves taken off.`,
    }),
    lining: choice({ label: "Lining", help: "Class of the running layer.", options: linings }),
    crush: dimension({
      label: "Crush",
      symbol: "a_c",
      unit: "mm",
      per,
      range: ["0 mm", "0.3 mm"],
      tolerance: "0.01",
      help: `How far one end of a ${where} bearing shell stands proud of the housing’s joint when the other is held flush: the excess length that presses it in.`,
    }),
    chamferDepth: dimension({
      label: "Edge chamfer",
      symbol: "q_c",
      unit: "mm",
      range: ["0 mm", "5 mm"],
      tolerance: "0.1",
      help: "Depth, square to the shaft, of the chamfer on the shell’s edge next to the fillet.",
    }),
    chamferWidth: dimension({
      label: "Edge chamfer width",
      symbol: "w_q",
      unit: "mm",
      range: ["0 mm", "6 mm"],
      tolerance: "0.1",
      help: "Width, along the shaft, of the chamfer on the shell’s edge next to the fillet.",
    }),
    edgeToCheek: dimension({
      label: "Shell edge to cheek",
      symbol: "a_e",
      unit: "mm",
      range: ["0 mm", "20 mm"],
      tolerance: "0.2",
      help: "Least axial distance from the shell’s edge to the cheek from which the fillet rises, with the play taken to that side.",
    }),
    roughness: dimension({
      label: "Shell roughness Rq",
      symbol: "Rq_s",
      unit: "um",
      range: ["0.02 um", "5 um"],
      help: "Root mean square roughness of the running face.",
      assumed: {
        value: "0.4 um ± 0.2",
        because: "bored or plated shells have about 0.2 to 0.6 µm (from memory)",
      },
    }),
  };
}

/** The shells of the main bearings. */
export const mainBearing = part(
  {
    key: "mainBearing",
    id: "main-bearing",
    label: "Main bearings",
    help: "The shells of the main bearings.",
    exchangeable: true,
  },
  {
    ...shellFields("main", "the lower main shell", "main"),
    thrustWebWidth: dimension({
      label: "Web at the thrust bearing",
      symbol: "w_th",
      unit: "mm",
      range: ["5 mm", "140 mm"],
      tolerance: "0.02",
      help: "Width of the block’s web and cap between the two thrust washers.",
    }),
    thrustWasher: dimension({
      label: "Thrust washer",
      symbol: "t_th",
      unit: "mm",
      range: ["0.5 mm", "8 mm"],
      tolerance: "0.02",
      help: "Thickness of one thrust washer or flange.",
    }),
    thrustArea: dimension({
      label: "Thrust area",
      symbol: "A_th",
      unit: "mm2",
      range: ["50 mm2", "20000 mm2"],
      tolerance: "5 %",
      help: "Area of the thrust face that takes the load, its oil grooves taken off.",
    }),
    thrustLoad: dimension({
      label: "Thrust load",
      symbol: "F_th",
      unit: "N",
      range: ["0 N", "20000 N"],
      tolerance: "10 %",
      help: "Force along the crankshaft that the clutch, when it is let out, or the torque converter lays on the thrust bearing.",
    }),
    endPlay: dimension({
      label: "Measured end play",
      symbol: "E_m",
      unit: "mm",
      range: ["0 mm", "1 mm"],
      tolerance: "0.01",
      help: "How far the crankshaft can be levered to and fro along its axis, by an indicator on its end. It outranks the end play from sizes.",
    }),
    groove: choice({
      label: "Oil groove",
      help: "How far the oil groove goes round the main bearings.",
      options: {
        upper: "a groove in the upper shell only",
        full: "a groove all round",
      },
      assumed: {
        value: "upper",
        because: "main shells with a groove in the upper half are usual (common practice)",
      },
    }),
    landWidth: dimension({
      label: "Land beside the groove",
      symbol: "l_g",
      unit: "mm",
      range: ["1 mm", "60 mm"],
      tolerance: "0.2",
      help: "Width of the plain land on each side of the oil groove.",
    }),
  },
);

/** The shells of the big-end bearings. */
export const rodBearing = part(
  {
    key: "rodBearing",
    id: "rod-bearing",
    label: "Rod bearings",
    help: "The shells of the big-end bearings.",
    exchangeable: true,
  },
  {
    ...shellFields("rod", "the upper rod shell", "cylinder"),
    mass: dimension({
      label: "Mass of both shells",
      symbol: "m_sh",
      unit: "g",
      range: ["2 g", "800 g"],
      tolerance: "3 %",
      help: "Mass of the two shells of one rod.",
    }),
  },
);
